import { type FormEvent, useId, useState } from 'react';
import { parseMoment } from '../../format/utc-moment.js';
import { momentText, typedMoment, wireMinute } from '../../format/when.js';
import { Button } from '../actions/button.js';
import { MomentField } from '../fields/moment-field.js';
import './as-of-bar.css';

interface AsOfBarProps {
  /** The instant shown, as in the page's address; undefined is now. */
  readonly at: string | undefined;
  /** Asks for another instant, or for now. */
  readonly onAt: (at: string | undefined) => void;
  /** 'Up to', where an amount is added up until then. */
  readonly label?: string;
}

/** Shows the records as they were at an instant, and says plainly when that is not now. */
export function AsOfBar({ at, onAt, label = 'As of' }: AsOfBarProps) {
  const id = useId();
  const [typed, setTyped] = useState(typedMoment(at));
  const [error, setError] = useState<string | null>(null);
  const show = (event: FormEvent) => {
    event.preventDefault();
    const parsed = parseMoment(typed);
    setError(parsed.ok ? null : parsed.reason);
    if (parsed.ok) onAt(wireMinute(parsed.instant));
    else document.getElementById(id)?.focus();
  };
  const now = () => {
    setTyped('');
    setError(null);
    onAt(undefined);
  };
  return (
    <div className={at === undefined ? 'as-of' : 'as-of as-of-past'}>
      {at !== undefined && (
        <p role="status">
          <strong>
            {label} {momentText(at)}.
          </strong>{' '}
          This is not the present state.
        </p>
      )}
      <form className="as-of-form no-print" noValidate onSubmit={show}>
        <MomentField
          id={id}
          label={label}
          hint="UTC, for example 2026-11-11 14:05"
          value={typed}
          onTyped={setTyped}
          error={error}
        />
        <Button type="submit">Show</Button>
        {at !== undefined && <Button onClick={now}>Show now</Button>}
      </form>
    </div>
  );
}
