import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useId, useState } from 'react';
import { parseDate, parseMoment } from '../../format/utc-moment.js';
import { typedMoment, wireMinute } from '../../format/when.js';
import { airframesQuery } from '../../server/fleet.js';
import { Button } from '../../ui/actions/button.js';
import { MomentField } from '../../ui/fields/moment-field.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { toldText } from './counter-words.js';
import type { AskedMoment, ToldMoment } from './counters-data.js';

const KINDS = [
  { value: 'now', label: 'Now' },
  { value: 'at', label: 'At an instant' },
  { value: 'page', label: 'After a log page' },
  { value: 'beforeFirst', label: 'Before the first flight of a date' },
  { value: 'afterLast', label: 'After the last flight of a date' },
] as const;

type Kind = (typeof KINDS)[number]['value'];

interface Typed {
  readonly kind: Kind;
  readonly text: string;
  readonly airframeId: string;
}

function typedOf(asked: AskedMoment): Typed {
  const airframeId = asked.airframeId ?? '';
  if (asked.at !== undefined) return { kind: 'at', text: typedMoment(asked.at), airframeId };
  if (asked.page !== undefined) return { kind: 'page', text: asked.page, airframeId };
  if (asked.beforeFirst !== undefined) return { kind: 'beforeFirst', text: asked.beforeFirst, airframeId };
  if (asked.afterLast !== undefined) return { kind: 'afterLast', text: asked.afterLast, airframeId };
  return { kind: 'now', text: '', airframeId };
}

/** What is asked for, or why it cannot be. */
function read({ kind, text, airframeId }: Typed): AskedMoment | string {
  const whose = airframeId === '' ? {} : { airframeId };
  if (kind === 'now') return {};
  if (kind === 'at') {
    const moment = parseMoment(text);
    return moment.ok ? { at: wireMinute(moment.instant) } : moment.reason;
  }
  if (kind === 'page') {
    const page = text.trim();
    return page === '' ? 'Enter the number of the log page' : { page, ...whose };
  }
  const date = parseDate(text);
  return date.ok ? { [kind]: text.trim(), ...whose } : date.reason;
}

const LABELS: Readonly<Record<Exclude<Kind, 'now' | 'at'>, string>> = {
  page: 'Log page',
  beforeFirst: 'Date',
  afterLast: 'Date',
};

interface MomentBarProps {
  readonly asked: AskedMoment;
  /** The moment as the server understood it; null for now, undefined while it is not known. */
  readonly told: ToldMoment | null | undefined;
  /** Whether it is plain whose log and days are meant. */
  readonly airframeKnown: boolean;
  readonly onAsk: (asked: AskedMoment) => void;
}

/** As of when: an instant, a log page, or the edges of a day's flying. */
export function MomentBar({ asked, told, airframeKnown, onAsk }: MomentBarProps) {
  const id = useId();
  const [typed, setTyped] = useState(() => typedOf(asked));
  const [error, setError] = useState<string | null>(null);
  const airframes = useQuery({ ...airframesQuery, enabled: !airframeKnown }).data ?? [];
  const put = (next: Partial<Typed>) => setTyped({ ...typed, ...next });
  const show = (event: FormEvent) => {
    event.preventDefault();
    const found = read(typed);
    setError(typeof found === 'string' ? found : null);
    if (typeof found === 'string') document.getElementById(id)?.focus();
    else onAsk(found);
  };
  const { kind, text } = typed;
  return (
    <div className={told == null ? 'as-of' : 'as-of as-of-past'}>
      {told != null && (
        <p role="status">
          <strong>As of {toldText(told)}.</strong> This is not the present state.
        </p>
      )}
      <form className="moment-form no-print" noValidate onSubmit={show}>
        <SelectField
          label="As of"
          options={KINDS}
          value={kind}
          onChange={({ target }) =>
            put({ kind: KINDS.find(({ value }) => value === target.value)?.value ?? 'now', text: '' })
          }
        />
        {kind === 'at' && (
          <MomentField
            id={id}
            label="Date and time, UTC"
            value={text}
            onTyped={(next) => put({ text: next })}
            error={error}
          />
        )}
        {kind !== 'at' && kind !== 'now' && (
          <TextField
            id={id}
            label={LABELS[kind]}
            hint={kind === 'page' ? 'As written' : 'Year-month-day'}
            mono
            value={text}
            onChange={({ target }) => put({ text: target.value })}
            error={error}
          />
        )}
        {kind !== 'at' && kind !== 'now' && !airframeKnown && (
          <SelectField
            label="Of airframe"
            unchosen="The one it is on"
            options={airframes.map(({ id: value, registration: label }) => ({ value, label }))}
            value={typed.airframeId}
            onChange={({ target }) => put({ airframeId: target.value })}
          />
        )}
        <Button type="submit">Show</Button>
      </form>
    </div>
  );
}
