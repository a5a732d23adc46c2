import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { counted } from '../../format/counts.js';
import { hoursMinutes, thousands } from '../../format/hours.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { type History, type HistoryLine, historyQuery, type Subject } from './history-data.js';
import { type LineFilter, linesShown } from './line-filter.js';
import { LineFilters } from './line-filters.js';
import { LineTable } from './line-table.js';
import { PrintReport } from './print-report.js';
import './history.css';

interface SubjectHistoryProps {
  readonly subject: Subject;
  readonly filter: LineFilter;
  readonly onFilter: (next: LineFilter) => void;
}

/** So many lines at a time, so that the page answers quickly. */
const LINES_AT_A_TIME = 300;

function Identity({ history }: { readonly history: History }) {
  return (
    <dl className="identity">
      {history.subject.identity.map(({ name, value }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Whether a line adds a part of a cycle, as a touch-and-go may. */
const hasPartOfCycle = ({ adds }: HistoryLine): boolean =>
  adds?.cycles != null && adds.cycles.units % adds.cycles.denominator !== 0;

function Totals({ history, unit }: { readonly history: History; readonly unit: string }) {
  const { minutes, cycles } = history.totals;
  return (
    <p>
      Total now: {minutes === null ? 'hours not verified' : `${hoursMinutes(minutes)} hours`},{' '}
      {cycles === null ? `${unit.toLowerCase()} not verified` : `${thousands(cycles)} ${unit.toLowerCase()}`}
      {history.lines.some(hasPartOfCycle) && '. Totals of cycles are rounded up to the whole cycle.'}
    </p>
  );
}

function Lines({ history, subject, filter, onFilter }: SubjectHistoryProps & { readonly history: History }) {
  const [most, setMost] = useState(LINES_AT_A_TIME);
  const unit = subject.kind === 'airframe' ? 'Flights' : 'Cycles';
  const shown = linesShown(history.lines, filter);
  const filtered = shown.length < history.lines.length;
  if (history.lines.length === 0)
    return <EmptyState>Nothing happened to {history.subject.label} yet.</EmptyState>;
  return (
    <div className="stack">
      <LineFilters lines={history.lines} filter={filter} onFilter={onFilter} />
      <p role="status">
        {filtered
          ? `${thousands(shown.length)} of ${counted(history.lines.length, 'line')} shown. Totals count every line.`
          : counted(history.lines.length, 'line')}
      </p>
      {shown.length === 0 ? (
        <EmptyState action={<Button onClick={() => onFilter({})}>Show all lines</Button>}>
          No line matches what is asked for.
        </EmptyState>
      ) : (
        <LineTable caption={`History of ${history.subject.label}`} lines={shown.slice(0, most)} unit={unit} />
      )}
      {shown.length > most && (
        <div>
          <Button onClick={() => setMost(most + LINES_AT_A_TIME)}>
            Show {thousands(Math.min(LINES_AT_A_TIME, shown.length - most))} more lines
          </Button>
        </div>
      )}
    </div>
  );
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Everything that happened to one airframe or component, with who recorded it. */
export function SubjectHistory(props: SubjectHistoryProps) {
  const { subject } = props;
  const history = useQuery(historyQuery(subject));
  const label = history.data?.subject.label;
  return (
    <>
      <PageHeading
        title={label === undefined ? 'History' : `History of ${lowerFirst(label)}`}
        below={
          history.data !== undefined && (
            <Totals history={history.data} unit={subject.kind === 'airframe' ? 'Flights' : 'Cycles'} />
          )
        }
        actions={<ActionLink href="/history">Another history</ActionLink>}
      />
      {history.data !== undefined && <Identity history={history.data} />}
      <PrintReport key={subject.id} subject={subject} label={label ?? 'this record'} />
      <Answered query={history} doing="Reading the history" lines={8}>
        {(data) => <Lines {...props} history={data} />}
      </Answered>
    </>
  );
}
