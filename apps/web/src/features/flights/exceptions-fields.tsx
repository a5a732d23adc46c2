import { SelectField } from '../../ui/fields/select-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import type { TypedException } from './entry/typed-flight.js';

export interface ExceptionPosition {
  readonly number: number;
  readonly serial: string | null;
}

interface ExceptionsFieldsProps {
  readonly positions: readonly ExceptionPosition[];
  readonly value: readonly TypedException[];
  readonly onChange: (next: readonly TypedException[]) => void;
  readonly error?: string | null | undefined;
}

const RAN = 'ran';
const CHOICES = [
  { value: RAN, label: 'Ran throughout' },
  { value: 'shut-down', label: 'Shut down in flight' },
  { value: 'not-running', label: 'Did not run at all' },
] as const;

/** What each position did otherwise than the airframe. */
export function ExceptionsFields({ positions, value, onChange, error }: ExceptionsFieldsProps) {
  const of = (number: number) => value.find((entry) => entry.positionNumber === number);
  const put = (number: number, next: Omit<TypedException, 'positionNumber'> | null) => {
    const others = value.filter((entry) => entry.positionNumber !== number);
    onChange(next === null ? others : [...others, { positionNumber: number, ...next }]);
  };
  const choose = (number: number, kind: string) => {
    if (kind === 'shut-down' || kind === 'not-running') put(number, { kind, minutes: '' });
    else put(number, null);
  };
  return (
    <div className="stack">
      {(error ?? '') !== '' && <p className="field-error">{error}</p>}
      {positions.map(({ number, serial }) => {
        const label = `Position ${number}`;
        const held = of(number);
        const name = serial === null ? `${label}, empty` : `${label}, ${serial}`;
        return (
          <div key={number} className="exception-row">
            <SelectField
              label={name}
              options={CHOICES}
              value={held?.kind ?? RAN}
              onChange={(event) => choose(number, event.target.value)}
            />
            {held?.kind === 'shut-down' && (
              <TextField
                label={`Time it stood still, ${label.toLowerCase()}`}
                hint="Hours and minutes, for example 2:21"
                mono
                className="field-short"
                value={held.minutes}
                onChange={(event) => put(number, { kind: 'shut-down', minutes: event.target.value })}
              />
            )}
          </div>
        );
      })}
    </div>
  );
}
