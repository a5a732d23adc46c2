import { type KeyboardEvent, useState } from 'react';
import {
  type Decimal,
  parseReading,
  type ReadingRange,
  type Verdict,
  verdictOf,
  verdictWords,
} from '../../format/reading.js';
import { FieldFrame } from '../fields/field-frame.js';
import { StatusMark } from '../status/status-mark.js';
import { RangeScale } from './range-scale.js';
import './reading-field.css';

/** What is made of a reading where more than the range decides: a tool, an extension, a run-on torque. */
export interface Judged {
  /** The range to be drawn; null while it is not known. */
  readonly range: ReadingRange | null;
  /** Where the pointer stands on it, as decimal text. */
  readonly at: string | null;
  readonly inside: boolean;
  readonly words: string;
}

export interface ReadingFieldProps {
  readonly id?: string | undefined;
  /** What is read, without the unit: 'Reading of the wrench'. */
  readonly label: string;
  readonly unit: string;
  readonly range?: ReadingRange | null | undefined;
  /** In place of the plain look at the range. */
  readonly judged?: Judged | undefined;
  /** Exactly what was typed. Nothing rewrites it, not even into the range. */
  readonly value: string;
  readonly onTyped: (typed: string) => void;
  /** Called on leaving the field or Enter, with the verdict; null when there is none to give. */
  readonly onVerdict?: ((verdict: Verdict | null) => void) | undefined;
  /** Whether the reading is finished, where a keypad beside it can finish it too; else leaving it does. */
  readonly finished?: boolean | undefined;
  readonly onFocus?: (() => void) | undefined;
  readonly error?: string | null | undefined;
  readonly hint?: string | undefined;
  /** Why no reading can be taken now, e.g. a tool past its calibration date. */
  readonly blockedBecause?: string | null | undefined;
  /** A keypad of the page stands beside it: the system's own stays away, a real keyboard works. */
  readonly ownKeypad?: boolean | undefined;
}

const enterWhat = (unit: string, range: ReadingRange | null | undefined): string =>
  `Enter the reading in ${unit}, for example ${range?.low ?? '112.4'}`;

interface Shown {
  readonly range: ReadingRange;
  readonly value: Decimal | null;
  readonly verdict: Verdict | null;
}

const decimalOf = (text: string | null): Decimal | null => {
  const parsed = text === null ? null : parseReading(text);
  return parsed?.ok === true ? parsed.value : null;
};

/** What the scale shows: the judgement given, or the plain look at the range. */
function shownOf({ range, judged, value }: ReadingFieldProps): Shown | null {
  const drawn = judged === undefined ? (range ?? null) : judged.range;
  if (drawn === null) return null;
  const at = decimalOf(judged === undefined ? value : judged.at);
  return { range: drawn, value: at, verdict: at === null ? null : verdictOf(at, drawn) };
}

/** The verdict as shape and words; null while there is none. */
function markOf({ judged, unit }: ReadingFieldProps, shown: Shown | null) {
  if (judged !== undefined) return { inside: judged.inside, words: judged.words };
  if (shown === null || shown.verdict === null) return null;
  return {
    inside: shown.verdict.kind === 'inside',
    words: verdictWords(shown.verdict, unit, shown.range),
  };
}

/** A recorded reading: text with one decimal mark, judged only when it is finished. */
export function ReadingField(props: ReadingFieldProps) {
  const { id, label, unit, range, judged, value, onTyped, onVerdict, onFocus } = props;
  const { error, hint, blockedBecause, ownKeypad } = props;
  const [left, setLeft] = useState(value !== '');
  const done = props.finished ?? left;
  const typed = value.trim() !== '';
  const parsed = parseReading(value);
  const shown = shownOf(props);
  const mark = markOf(props, shown);
  const finish = () => {
    setLeft(typed);
    if (typed) onVerdict?.(shown?.verdict ?? null);
  };
  const unreadable = done && typed && !parsed.ok ? enterWhat(unit, judged?.range ?? range) : null;
  const blocked = (blockedBecause ?? null) !== null;
  return (
    <div className="reading">
      <FieldFrame id={id} label={`${label}, ${unit}`} hint={hint} error={error ?? unreadable}>
        {(wiring) => (
          <input
            {...wiring}
            type="text"
            inputMode={ownKeypad === true ? 'none' : 'decimal'}
            autoComplete="off"
            spellCheck={false}
            className="field-input field-mono reading-input"
            value={value}
            disabled={blocked}
            onChange={(event) => {
              setLeft(false);
              onTyped(event.target.value);
            }}
            onFocus={onFocus}
            onBlur={finish}
            onKeyDown={(event: KeyboardEvent) => event.key === 'Enter' && finish()}
          />
        )}
      </FieldFrame>
      {shown !== null && (
        <RangeScale
          range={shown.range}
          unit={unit}
          value={shown.value}
          verdict={done ? shown.verdict : null}
        />
      )}
      <p className="reading-verdict" role="status">
        {blocked && <StatusMark status="blocked" word={blockedBecause ?? ''} />}
        {!blocked && done && typed && parsed.ok && mark !== null && (
          <StatusMark status={mark.inside ? 'in-limits' : 'over-limit'} word={mark.words} />
        )}
      </p>
    </div>
  );
}
