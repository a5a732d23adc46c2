import { type HoursStyle, hours, thousands } from '../../format/hours.js';
import './status.css';

interface CounterProps {
  /** Whole minutes; null when no trusted record says. Left out when the thing has no hours. */
  readonly minutes?: number | null | undefined;
  /** Whole cycles, or their exact text; null when no trusted record says. Left out when the thing has no cycles. */
  readonly cycles?: number | string | null | undefined;
  readonly style?: HoursStyle | undefined;
  /** Before the two words: 'Since visit' gives 'Since visit, hours'. */
  readonly since?: string | undefined;
}

function Amount({ term, value }: { readonly term: string; readonly value: string | null }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd className={value === null ? 'counter-unknown' : ''}>{value ?? 'Not verified'}</dd>
    </div>
  );
}

/** Hours and cycles run. What is not known is never shown as nought. */
export function Counter({ minutes, cycles, style = 'minutes', since }: CounterProps) {
  const term = (word: string) => (since === undefined ? word : `${since}, ${word.toLowerCase()}`);
  return (
    <dl className="counter">
      {minutes !== undefined && (
        <Amount term={term('Hours')} value={minutes === null ? null : hours(minutes, style)} />
      )}
      {cycles !== undefined && (
        <Amount term={term('Cycles')} value={typeof cycles === 'number' ? thousands(cycles) : cycles} />
      )}
    </dl>
  );
}
