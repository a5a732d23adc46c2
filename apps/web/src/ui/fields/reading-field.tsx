import { type KeyboardEvent, useState } from 'react';
import { parseReading, type ReadingRange, type Verdict, verdictOf } from '../../format/reading.js';
import { StatusMark } from '../status/status-mark.js';
import { FieldFrame } from './field-frame.js';
import { RangeScale } from './range-scale.js';
import './reading-field.css';

export interface ReadingFieldProps {
  readonly id?: string | undefined;
  /** What is read, without the unit: 'Reading of the wrench'. */
  readonly label: string;
  readonly unit: string;
  readonly range?: ReadingRange | null | undefined;
  /** Exactly what was typed. Nothing rewrites it, not even into the range. */
  readonly value: string;
  readonly onTyped: (typed: string) => void;
  /** Called on leaving the field or Enter, with the verdict; null when there is none to give. */
  readonly onVerdict?: ((verdict: Verdict | null) => void) | undefined;
  readonly error?: string | null | undefined;
  readonly hint?: string | undefined;
  /** Why no reading can be taken now, e.g. a tool past its calibration date. */
  readonly blockedBecause?: string | null | undefined;
}

const enterWhat = (unit: string, range: ReadingRange | null | undefined): string =>
  `Enter the reading in ${unit}, for example ${range?.low ?? '112.4'}`;

/** A verdict in words: '3.4 N·m above the range'. */
export function verdictWords(verdict: Verdict, unit: string, range: ReadingRange): string {
  if (verdict.kind === 'inside') return `Inside the range, ${range.low} to ${range.high} ${unit}`;
  return `${verdict.by} ${unit} ${verdict.kind} the range`;
}

/** A recorded reading: text with one decimal mark, judged only when it is finished. */
export function ReadingField(props: ReadingFieldProps) {
  const { id, label, unit, range, value, onTyped, onVerdict, error, hint, blockedBecause } = props;
  const [done, setDone] = useState(value !== '');
  const parsed = parseReading(value);
  const verdict = parsed.ok && range ? verdictOf(parsed.value, range) : null;
  const finish = () => {
    setDone(value.trim() !== '');
    if (value.trim() !== '') onVerdict?.(verdict);
  };
  const unreadable = done && value.trim() !== '' && !parsed.ok ? enterWhat(unit, range) : null;
  const blocked = (blockedBecause ?? null) !== null;
  return (
    <div className="reading">
      <FieldFrame id={id} label={`${label}, ${unit}`} hint={hint} error={error ?? unreadable}>
        {(wiring) => (
          <input
            {...wiring}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            spellCheck={false}
            className="field-input field-mono reading-input"
            value={value}
            disabled={blocked}
            onChange={(event) => {
              setDone(false);
              onTyped(event.target.value);
            }}
            onBlur={finish}
            onKeyDown={(event: KeyboardEvent) => event.key === 'Enter' && finish()}
          />
        )}
      </FieldFrame>
      {range && (
        <RangeScale
          range={range}
          unit={unit}
          value={parsed.ok ? parsed.value : null}
          verdict={done ? verdict : null}
        />
      )}
      <p className="reading-verdict" role="status">
        {blocked && <StatusMark status="blocked" word={blockedBecause ?? ''} />}
        {!blocked && done && verdict !== null && range && (
          <StatusMark
            status={verdict.kind === 'inside' ? 'in-limits' : 'over-limit'}
            word={verdictWords(verdict, unit, range)}
          />
        )}
      </p>
    </div>
  );
}
