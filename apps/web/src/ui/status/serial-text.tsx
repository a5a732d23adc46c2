import './status.css';

interface SerialTextProps {
  readonly children: string;
  readonly strong?: boolean;
}

/** A serial or part number, in letters that cannot be confused: 0 and O, 1 and I, 8 and B. */
export function SerialText({ children, strong = false }: SerialTextProps) {
  return <span className={strong ? 'serial serial-strong' : 'serial'}>{children}</span>;
}
