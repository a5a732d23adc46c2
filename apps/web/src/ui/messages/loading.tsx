import './messages.css';

interface LoadingProps {
  /** 'Reading the positions' */
  readonly label: string;
  /** As many bars as lines will come, so that nothing jumps. */
  readonly lines?: number;
}

/** Nothing for 300 ms, then grey bars. */
export function Loading({ label, lines = 3 }: LoadingProps) {
  return (
    <div className="loading" role="status" aria-label={label}>
      <span className="visually-hidden">{label}</span>
      {Array.from({ length: lines }, (_, line) => (
        // The bars never change places.
        // biome-ignore lint/suspicious/noArrayIndexKey: fixed list
        <span key={line} className="loading-bar" aria-hidden="true" />
      ))}
    </div>
  );
}

/** Beside data shown from before, while it is read again. */
export function Checking() {
  return (
    <span className="quiet small" role="status">
      Checking
    </span>
  );
}
