import { exactCycles } from '../../format/cycles.js';
import { hoursMinutes, thousands } from '../../format/hours.js';
import { momentText } from '../../format/when.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import type { HistoryLine } from './history-data.js';
import { byYear } from './line-filter.js';
import '../../ui/table/data-table.css';
import './history.css';

interface LineTableProps {
  readonly caption: string;
  readonly lines: readonly HistoryLine[];
  /** 'flights' of an airframe, 'cycles' of a component. */
  readonly unit: 'Flights' | 'Cycles';
}

const UNKNOWN = 'Not known';
const COLUMNS = 7;

/** What the line adds, struck where the line does not count. */
function Added({ struck, children }: { readonly struck: boolean; readonly children: string }) {
  return struck && children !== '' ? <del>{children}</del> : children;
}

function addedHours({ adds }: HistoryLine): string {
  if (adds === null) return '';
  return adds.minutes === null ? UNKNOWN : `+${hoursMinutes(adds.minutes)}`;
}

function addedCycles({ adds }: HistoryLine): string {
  if (adds === null) return '';
  return adds.cycles === null ? UNKNOWN : `+${exactCycles(adds.cycles)}`;
}

interface StruckProps {
  readonly struck: HistoryLine['struck'];
  /** A signature or an entry of a step: undone by its signer. */
  readonly undone: boolean;
}

function Struck({ struck, undone }: StruckProps) {
  if (struck === null) return null;
  return (
    <p className="line-struck">
      <strong>{undone ? 'Undone' : 'Voided'}</strong> {momentText(struck.recordedAt)} by {struck.by}: “
      {undone ? struck.reason.replace(/^Signature undone: /, '') : struck.reason}”. It does not count.
    </p>
  );
}

interface LineProps {
  readonly line: HistoryLine;
}

/** The way to the package, or to the step in it. */
function WorkLink({ work }: { readonly work: HistoryLine['work'] }) {
  if (work === null) return null;
  const { packageId, number, stepId } = work;
  return (
    <p className="no-print small">
      <RouteLink href={`/packages/${packageId}${stepId === null ? '' : `?step=${stepId}`}`}>
        {stepId === null ? `Open ${number}` : `Open the step in ${number}`}
      </RouteLink>
    </p>
  );
}

/** What a step held, part by part; any other line in one. */
function Detail({ line: { detail, work } }: LineProps) {
  if (work === null || work.stepId === null) return detail;
  const [first, ...parts] = detail.split('; ');
  return (
    <>
      {first}
      {parts.length > 0 && ';'}
      {parts.map((part, place) => (
        // Two readings may be alike; the parts of a line never change places.
        // biome-ignore lint/suspicious/noArrayIndexKey: place is their identity
        <span key={place} className="line-part">
          {part}
          {place < parts.length - 1 && ';'}
        </span>
      ))}
    </>
  );
}

function Line({ line }: LineProps) {
  const { struck, totals, entry } = line;
  return (
    <tr data-voided={struck === null ? undefined : true}>
      <td className="line-when">
        {momentText(line.at)}
        {line.placed !== null && <div className="quiet small">{line.placed}</div>}
      </td>
      <th scope="row" className="line-what">
        {struck === null ? (
          <>
            <strong>{line.title}</strong> <Detail line={line} />
          </>
        ) : (
          <del>
            <strong>{line.title}</strong> <Detail line={line} />
          </del>
        )}
        <Struck struck={struck} undone={line.work?.stepId != null} />
        <WorkLink work={line.work} />
      </th>
      <td className="cell-figures">
        <Added struck={struck !== null}>{addedHours(line)}</Added>
      </td>
      <td className="cell-figures">
        <Added struck={struck !== null}>{addedCycles(line)}</Added>
      </td>
      <td className="cell-figures">{totals.minutes === null ? UNKNOWN : hoursMinutes(totals.minutes)}</td>
      <td className="cell-figures">{totals.cycles === null ? UNKNOWN : thousands(totals.cycles)}</td>
      <td className="line-entry">
        {entry.by}
        <div className="quiet small">
          {entry.number === null ? 'Not in the journal' : `Entry ${thousands(entry.number)}`},{' '}
          {momentText(entry.recordedAt)}
        </div>
      </td>
    </tr>
  );
}

/** What happened, line by line under its year, with the totals after each. */
export function LineTable({ caption, lines, unit }: LineTableProps) {
  return (
    <section
      className="table-scroll"
      aria-label={caption}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
      tabIndex={0}
    >
      <table className="data-table line-table">
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">When, UTC</th>
            <th scope="col">What</th>
            <th scope="col" className="cell-end">
              Adds hours
            </th>
            <th scope="col" className="cell-end">
              Adds {unit.toLowerCase()}
            </th>
            <th scope="col" className="cell-end">
              Hours then
            </th>
            <th scope="col" className="cell-end">
              {unit} then
            </th>
            <th scope="col">Recorded by</th>
          </tr>
        </thead>
        {byYear(lines).map((part) => (
          <tbody key={`${part.year} ${part.lines[0]?.at ?? ''}`}>
            <tr className="line-year">
              <th scope="rowgroup" colSpan={COLUMNS}>
                {part.year}
              </th>
            </tr>
            {part.lines.map((line, place) => (
              // Lines have no name of their own; they never change places within one answer.
              // biome-ignore lint/suspicious/noArrayIndexKey: fixed order
              <Line key={`${line.entry.number ?? ''} ${line.at} ${place}`} line={line} />
            ))}
          </tbody>
        ))}
      </table>
    </section>
  );
}
