import { packageKind, packagePlace } from '../../format/package-words.js';
import { dayText } from '../../format/when.js';
import type { WorkRow } from '../../server/work.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import { WholeSerials } from '../../ui/status/whole-serials.js';
import type { Column } from '../../ui/table/column.js';

function Subject({ row: { airframe, component } }: { readonly row: WorkRow }) {
  if (airframe !== null)
    return (
      <RouteLink href={`/positions/${airframe.id}`}>
        <SerialText>{airframe.registration}</SerialText>
      </RouteLink>
    );
  if (component === null) return 'None';
  return (
    <RouteLink href={`/components/${component.id}`}>
      <SerialText>{component.serialNumber}</SerialText>
    </RouteLink>
  );
}

function Standing({ row: { status, releaseNumber } }: { readonly row: WorkRow }) {
  if (status === 'released')
    return <StatusMark status="signed" word={`Released ${releaseNumber ?? ''}`.trim()} />;
  if (status === 'withdrawn') return <StatusMark status="closed" word="Withdrawn" />;
  return <StatusMark status="open" word="Not released" />;
}

const stepsText = ({ steps }: WorkRow): string =>
  steps.total === 0 ? 'No steps' : `${steps.signed} of ${steps.total}`;

/** Packages in a table: number, what, on what, how far, and the release. */
export const PACKAGE_COLUMNS: readonly Column<WorkRow>[] = [
  {
    id: 'number',
    header: 'Number',
    namesRow: true,
    cell: ({ id, number }) => (
      <RouteLink href={`/packages/${id}`}>
        <SerialText>{number}</SerialText>
      </RouteLink>
    ),
  },
  {
    id: 'title',
    header: 'Work',
    cell: ({ title, kind, place }) => (
      <>
        <span className="work-title">
          <WholeSerials>{title}</WholeSerials>
        </span>
        <span className="small quiet work-kind">
          {packageKind(kind)}
          {place !== null && `, ${packagePlace(place)}`}
        </span>
      </>
    ),
  },
  // Before the day and the airframe: what a narrow screen cuts at the right is not the release.
  { id: 'status', header: 'Release', cell: (row) => <Standing row={row} /> },
  { id: 'steps', header: 'Steps signed', cell: (row) => stepsText(row) },
  {
    id: 'opened',
    header: 'When',
    cell: ({ openedAt }) => <span className="work-day">{dayText(openedAt)}</span>,
  },
  { id: 'subject', header: 'On', cell: (row) => <Subject row={row} /> },
];
