import { type FormEvent, useState } from 'react';
import { hoursMinutes, parseHours } from '../../format/hours.js';
import { Button } from '../../ui/actions/button.js';
import { ChoiceField } from '../../ui/fields/choice-field.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { type LineFault, type ReadPlan, readPlan } from './plan-text.js';
import type { AskedReadiness, PlannedRate } from './planning-data.js';

/** What was read of the form and is asked about; `plan` where flights were pasted. */
export interface Asked {
  readonly body: AskedReadiness;
  readonly plan: ReadPlan | null;
}

type Mode = 'kept' | 'flights' | 'rate';

const MODES = [
  { value: 'kept', label: 'Flights planned' },
  { value: 'flights', label: 'Flights pasted here' },
  { value: 'rate', label: 'A rate' },
] as const;

const EXAMPLE = '2026-11-30\tVDL\tKRN\t06:10\t07:45\n2026-11-30\tKRN\tVDL\t08:40\t10:15';

interface Rate {
  readonly hours: string;
  readonly flights: string;
  readonly days: string;
  readonly horizon: string;
}

const RATE: Rate = { hours: '', flights: '', days: '7', horizon: '30' };

type RateFaults = Partial<Readonly<Record<keyof Rate, string>>>;

function rateFaults(rate: Rate): RateFaults {
  const whole = (name: 'flights' | 'days' | 'horizon') =>
    /^[1-9]\d*$/.test(rate[name].trim()) ? {} : { [name]: 'Enter a whole number, at least 1' };
  const hours = parseHours(rate.hours);
  return {
    ...(hours.ok ? {} : { hours: hours.reason }),
    ...whole('flights'),
    ...whole('days'),
    ...whole('horizon'),
  };
}

interface ReadForm {
  /** Null while something is not readable. */
  readonly asked: Asked | null;
  readonly rateFaults: RateFaults;
  readonly lineFaults: readonly LineFault[];
}

const READABLE: ReadForm = { asked: { body: {}, plan: null }, rateFaults: {}, lineFaults: [] };

function readForm(mode: Mode, text: string, rate: Rate): ReadForm {
  switch (mode) {
    case 'kept':
      return READABLE;
    case 'rate': {
      const wrong = rateFaults(rate);
      const hours = parseHours(rate.hours);
      if (Object.keys(wrong).length > 0 || !hours.ok) return { ...READABLE, asked: null, rateFaults: wrong };
      const body = {
        ...{ minutes: hours.minutes, flights: Number(rate.flights) },
        ...{ days: Number(rate.days), horizonDays: Number(rate.horizon) },
      };
      return { ...READABLE, asked: { body: { rate: body }, plan: null } };
    }
    case 'flights': {
      const plan = readPlan(text);
      const none = plan.flights.length === 0 && plan.faults.length === 0;
      const lineFaults = none ? [{ line: 1, message: 'Paste or type the flights to come.' }] : plan.faults;
      if (lineFaults.length > 0) return { ...READABLE, asked: null, lineFaults };
      return { ...READABLE, asked: { body: { flights: [...plan.flights] }, plan } };
    }
  }
}

/** The rate a plan has in force, to start from; blank without one. */
const rateOf = (planned: PlannedRate | undefined): Rate =>
  planned === undefined
    ? RATE
    : {
        ...RATE,
        hours: hoursMinutes(planned.minutes),
        flights: String(planned.flights),
        days: String(planned.days),
      };

interface PlanFormProps {
  /** The planned rate in force, if there is one. */
  readonly planned: PlannedRate | undefined;
  readonly onAsk: (asked: Asked) => void;
}

/** For which flying readiness is asked: flights planned and kept, flights pasted from a table, or a rate. */
export function PlanForm({ planned, onAsk }: PlanFormProps) {
  const [mode, setMode] = useState<Mode>('kept');
  const [text, setText] = useState('');
  const [typedRate, setRate] = useState<Rate | null>(null);
  const rate = typedRate ?? rateOf(planned);
  const [faults, setFaults] = useState<RateFaults>({});
  const [lineFaults, setLineFaults] = useState<readonly LineFault[]>([]);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const read = readForm(mode, text, rate);
    setFaults(read.rateFaults);
    setLineFaults(read.lineFaults);
    if (read.asked !== null) onAsk(read.asked);
  };
  const rateField = (name: keyof Rate) => ({
    value: rate[name],
    error: faults[name],
    onChange: ({ target }: { readonly target: { readonly value: string } }) =>
      setRate({ ...rate, [name]: target.value }),
  });
  return (
    <form className="stack no-print" noValidate onSubmit={submit}>
      <ChoiceField legend="Ask for" options={MODES} value={mode} onChoose={setMode} />
      {mode === 'flights' && (
        <>
          <TextAreaField
            label="Flights to come"
            rows={8}
            className="readiness-paste"
            value={text}
            placeholder={EXAMPLE}
            error={lineFaults.length === 0 ? undefined : 'Some lines are not readable: see below.'}
            hint="Paste them from a spreadsheet: date, from, to, take-off, landing, in UTC. With headings the columns may stand in any order."
            onChange={({ target }) => setText(target.value)}
          />
          {lineFaults.length > 0 && (
            <div role="alert">
              <ul className="readiness-faults">
                {lineFaults.map(({ line, message }) => (
                  <li key={line}>
                    Line {line}: {message}
                  </li>
                ))}
              </ul>
            </div>
          )}
        </>
      )}
      {mode === 'rate' && (
        <div className="readiness-fields">
          <TextField label="Hours" hint="For example 56:30" {...rateField('hours')} />
          <TextField label="Flights" inputMode="numeric" {...rateField('flights')} />
          <TextField label="In so many days" inputMode="numeric" {...rateField('days')} />
          <TextField label="Look ahead, days" inputMode="numeric" {...rateField('horizon')} />
        </div>
      )}
      <div>
        <Button type="submit" kind="primary">
          Show readiness
        </Button>
      </div>
    </form>
  );
}

/** The line of the text that a refusal of the server names, in words. */
export function lineOf(path: string | null, plan: ReadPlan | null): string {
  const place = /^flights[[.](\d+)/.exec(path ?? '')?.[1];
  const line = place === undefined ? undefined : plan?.lines[Number(place)];
  return line === undefined ? '' : `Line ${line}: `;
}
