import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { counted } from '../../format/counts.js';
import { hoursMinutes, parseHours } from '../../format/hours.js';
import { calendarDate } from '../../format/utc-date.js';
import { parseDate } from '../../format/utc-moment.js';
import { useAct } from '../../server/act.js';
import { useMay } from '../../server/authority.js';
import { Button } from '../../ui/actions/button.js';
import { type Faults, useActForm } from '../../ui/fields/act-form.js';
import { TextField } from '../../ui/fields/text-field.js';
import { Answered } from '../../ui/messages/answered.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { type NewPlannedRate, PLANNING_KEYS, plannedRatesQuery, planRate } from './planning-data.js';

interface Typed {
  readonly fromOn: string;
  readonly minutes: string;
  readonly flights: string;
  readonly days: string;
  readonly source: string;
}

const START: Typed = { fromOn: '', minutes: '', flights: '', days: '7', source: '' };

function check(typed: Typed): Faults {
  const date = parseDate(typed.fromOn);
  const hours = parseHours(typed.minutes);
  const whole = (name: 'flights' | 'days') =>
    /^[1-9]\d*$/.test(typed[name].trim()) ? {} : { [name]: 'Enter a whole number, at least 1' };
  return {
    ...(date.ok ? {} : { fromOn: date.reason }),
    ...(hours.ok ? {} : { minutes: hours.reason }),
    ...whole('flights'),
    ...whole('days'),
    ...(typed.source.trim() === '' ? { source: 'Enter where the rate is from' } : {}),
  };
}

const FIELDS = [
  ['fromOn', 'From', 'Year-month-day'],
  ['minutes', 'Hours', 'For example 56:30'],
  ['flights', 'Flights', ''],
  ['days', 'In so many days', ''],
  ['source', 'Source', 'The season’s plan, a contract'],
] as const satisfies readonly (readonly [keyof Typed, string, string])[];

function RateForm({ airframeId, onDone }: { readonly airframeId: string; readonly onDone: () => void }) {
  const act = useAct({ perform: planRate, onDone, refresh: PLANNING_KEYS });
  const words = ({
    fromOn,
    minutes,
    flights,
    days,
    source,
  }: Typed): NewPlannedRate & { airframeId: string } => {
    const hours = parseHours(minutes);
    return {
      ...{ airframeId, fromOn: fromOn.trim(), source: source.trim() },
      ...{ minutes: hours.ok ? hours.minutes : 0, flights: Number(flights), days: Number(days) },
    };
  };
  const form = useActForm({ start: START, check, words, act });
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      <div className="readiness-fields">
        {FIELDS.map(([name, label, hint]) => (
          <TextField
            key={name}
            label={label}
            hint={hint === '' ? undefined : hint}
            {...form.field(name)}
            value={form.typed[name]}
            onChange={({ target }) => form.change({ [name]: target.value })}
          />
        ))}
      </div>
      <div>
        <Button type="submit" busy={form.busy}>
          {form.busy ? 'Saving' : 'Record the rate'}
        </Button>
      </div>
    </form>
  );
}

/** What the airframe is planned to fly from a day on: the due list can project by it. */
export function PlannedRates({ airframeId }: { readonly airframeId: string }) {
  const query = useQuery(plannedRatesQuery(airframeId));
  const may = useMay('plan-flying');
  const [adding, setAdding] = useState(false);
  return (
    <section className="stack no-print" aria-labelledby="planned-rates">
      <h2 id="planned-rates" className="section-heading">
        Planned rate
      </h2>
      <Answered query={query} doing="Reading the planned rates" lines={2}>
        {(rates) => {
          const standing = rates.filter((rate) => !rate.voided);
          return standing.length === 0 ? (
            <p>No rate is planned: the due list projects by the average, or by the flights planned.</p>
          ) : (
            <ul className="readiness-rates">
              {standing.map(({ id, fromOn, minutes, flights, days, source, inForce }) => (
                <li key={id}>
                  {hoursMinutes(minutes)} h and {counted(flights, 'flight')} in {counted(days, 'day')}, from{' '}
                  {calendarDate(fromOn)}. {source}
                  {inForce && <strong> In force</strong>}
                </li>
              ))}
            </ul>
          );
        }}
      </Answered>
      {may &&
        (adding ? (
          <RateForm airframeId={airframeId} onDone={() => setAdding(false)} />
        ) : (
          <div>
            <Button onClick={() => setAdding(true)}>Plan a rate</Button>
          </div>
        ))}
    </section>
  );
}
