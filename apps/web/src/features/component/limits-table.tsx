import { exactCycles, sharePercent } from '../../format/cycles.js';
import { hoursMinutes, thousands } from '../../format/hours.js';
import type { Life, Slot } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { calendarText } from '../../ui/status/calendar-words.js';
import { ShareTrack } from '../../ui/status/life-share.js';
import { markOfLife } from '../../ui/status/life-status.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { endText, leftText, limitSource } from './life-words.js';
import { type LimitedPlace, limitedPlaces } from './limited-parts.js';

function limitText(life: Life | null): string {
  if (life === null) return 'Not known';
  if (life.kind === 'not-limited') return 'None';
  const told = [
    ...(life.cycleLimit === null ? [] : [`${thousands(life.cycleLimit)} cycles`]),
    ...(life.minuteLimit === null ? [] : [`${hoursMinutes(life.minuteLimit)} h`]),
    ...(life.calendar === null ? [] : [calendarText(life.calendar)]),
  ];
  return told.length === 0 ? 'Not known' : told.join(', ');
}

const remaining = (life: Life | null | undefined): number | null =>
  life?.kind === 'limited'
    ? (life.remainingCycles ??
      (life.remainingMinutes === null ? life.remainingDays : life.remainingMinutes / 60))
    : null;

const reasons = (life: Life | null): string => life?.reasons.map(({ text }) => text).join(' ') ?? '';

function Used({ life }: { readonly life: Life | null }) {
  if (life?.kind === 'not-limited') return '–';
  if (life?.used == null) return 'Not known';
  return (
    <>
      {sharePercent(life.used)}
      <span className="limit-track">
        <ShareTrack status={markOfLife(life)} used={life.used} />
      </span>
    </>
  );
}

const COLUMNS: readonly Column<LimitedPlace>[] = [
  {
    id: 'status',
    header: 'Status',
    cell: ({ part }) => <StatusMark status={markOfLife(part?.life ?? null)} />,
  },
  {
    id: 'part',
    header: 'Part',
    namesRow: true,
    cell: ({ slot, part }) => (
      <span className="limit-part">
        {part?.description ?? slot.name}
        {part === null ? (
          <span className="small">None recorded</span>
        ) : (
          <>
            <RouteLink href={`/components/${part.id}`}>
              <SerialText>{part.serialNumber}</SerialText>
            </RouteLink>
            <span className="small quiet">
              P/N <SerialText>{part.partNumber}</SerialText>
            </span>
          </>
        )}
      </span>
    ),
    sortBy: ({ slot, part }) => part?.description ?? slot.name,
  },
  {
    id: 'left',
    header: 'Left',
    cell: ({ part }) => (
      <>
        <strong className="limit-left">{leftText(part?.life ?? null)}</strong>
        {part?.life != null && part.life.reasons.length > 0 && (
          <span className="small limit-number">{reasons(part.life)}</span>
        )}
        {part?.life?.flagged === true && (
          <span className="small limit-number">
            Worst case accepted by {part.life.acceptedBy.map(({ by }) => by).join(', ')}
          </span>
        )}
      </>
    ),
    sortBy: ({ part }) => remaining(part?.life),
  },
  {
    id: 'end',
    header: 'Ends',
    cell: ({ part }) =>
      part?.life?.kind !== 'limited' ? (
        ''
      ) : (
        <>
          <span className="limit-end">{endText(part.life)}</span>
          {part.life.projectedOn !== null && (
            <span className="small quiet limit-number">{part.life.basis}</span>
          )}
        </>
      ),
    sortBy: ({ part }) => part?.life?.projectedOn ?? null,
  },
  {
    id: 'used',
    header: 'Used',
    align: 'figures',
    cell: ({ part }) => <Used life={part?.life ?? null} />,
  },
  {
    id: 'cycles',
    header: 'Cycles since new',
    align: 'figures',
    cell: ({ part }) => {
      const cycles = part?.counters.sinceNew.cycles ?? null;
      return cycles === null ? 'Not known' : exactCycles(cycles);
    },
  },
  {
    id: 'limit',
    header: 'Limit',
    cell: ({ part }) => (
      <>
        {limitText(part?.life ?? null)}
        <span className="small quiet limit-number limit-source">
          {part?.life == null ? '' : (limitSource(part.life) ?? 'No document recorded')}
          {part?.life?.ratingCode == null ? '' : `, rating ${part.life.ratingCode}`}
        </span>
      </>
    ),
  },
];

/** Every life in a component, the most urgent first. */
export function LimitsTable({ label, slots }: { readonly label: string; readonly slots: readonly Slot[] }) {
  const places = limitedPlaces(slots);
  if (places.length === 0)
    return <EmptyState>No life-limited part is recorded in it, so no limit can be told.</EmptyState>;
  return <DataTable caption={label} columns={COLUMNS} rows={places} rowKey={({ key }) => key} />;
}
