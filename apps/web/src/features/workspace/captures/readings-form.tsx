import type { ReadingRow, ReadingsCapture } from '@strutbook/domain/work/capture.js';
import { useId, useState } from 'react';
import { limitWords, parseReading, type ReadingRange, verdictOf } from '../../../format/reading.js';
import type { FieldMessage } from '../../../ui/messages/error-summary.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import type { Step } from '../work/work-shapes.js';
import { RecordForm } from './record-form.js';

/** An open end is as far as anything can be read. */
const rangeOf = ({ low, high }: ReadingRow): ReadingRange | null =>
  low === null && high === null ? null : { low: low ?? '-999999999', high: high ?? '999999999' };

function Mark({ row, typed }: { readonly row: ReadingRow; readonly typed: string }) {
  const parsed = parseReading(typed);
  if (!parsed.ok) return <StatusMark status="rejected" word="Not a number" />;
  const range = rangeOf(row);
  const verdict = range === null ? null : verdictOf(parsed.value, range);
  if (verdict === null) return <StatusMark status="not-applicable" word="No limit" />;
  if (verdict.kind === 'inside') return <StatusMark status="in-limits" word="Inside" />;
  return <StatusMark status="over-limit" word={`${verdict.by} ${verdict.kind}`} />;
}

interface LineProps {
  readonly id: string;
  readonly row: ReadingRow;
  readonly typed: string;
  readonly onTyped: (typed: string) => void;
}

function Line({ id, row, typed, onTyped }: LineProps) {
  const [left, setLeft] = useState(false);
  return (
    <tr>
      <th scope="row">
        <label htmlFor={id}>{row.label}</label>
      </th>
      <td>
        <span className="reading-cell">
          <input
            id={id}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            spellCheck={false}
            className="field-input field-mono"
            value={typed}
            onChange={(event) => onTyped(event.target.value)}
            onFocus={() => setLeft(false)}
            onBlur={() => setLeft(true)}
          />
          {row.unit}
        </span>
      </td>
      <td>{limitWords(row)}</td>
      <td role="status">{left && typed.trim() !== '' && <Mark row={row} typed={typed} />}</td>
    </tr>
  );
}

/** The readings of a run, all at one time, each against its limits. */
export function ReadingsForm({ step, capture }: { readonly step: Step; readonly capture: ReadingsCapture }) {
  const id = useId();
  const [values, setValues] = useState<Readonly<Record<string, string>>>({});
  const idOf = (key: string) => `${id}-${key}`;
  return (
    <RecordForm
      {...{ step, capture }}
      word="Record the readings"
      ids={Object.fromEntries(capture.rows.map(({ key }) => [`typed.values.${key}`, idOf(key)]))}
      read={() => {
        const empty = capture.rows.filter(({ key }) => (values[key] ?? '').trim() === '');
        const missing: FieldMessage[] = empty.map(({ key, label, unit }) => ({
          fieldId: idOf(key),
          message: `Enter ${label} in ${unit}`,
        }));
        return missing.length > 0 ? missing : { kind: 'readings', values };
      }}
      onRecorded={() => setValues({})}
    >
      <div className="readings-scroll">
        <table className="readings">
          <caption className="visually-hidden">{capture.label}</caption>
          <thead>
            <tr>
              <th scope="col">Reading</th>
              <th scope="col">Value</th>
              <th scope="col">Limits</th>
              <th scope="col">Verdict</th>
            </tr>
          </thead>
          <tbody>
            {capture.rows.map((row) => (
              <Line
                key={row.key}
                id={idOf(row.key)}
                row={row}
                typed={values[row.key] ?? ''}
                onTyped={(typed) => setValues({ ...values, [row.key]: typed })}
              />
            ))}
          </tbody>
        </table>
      </div>
    </RecordForm>
  );
}
