import { counted } from '../../../format/counts.js';
import { exactCycles } from '../../../format/cycles.js';
import { hoursMinutes, thousands } from '../../../format/hours.js';
import { remainingCycles, remainingDays, remainingMinutes } from '../../../format/remaining.js';
import { calendarDate } from '../../../format/utc-date.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { Notice } from '../../../ui/messages/notice.js';
import { markOf } from '../../../ui/status/near.js';
import { SerialText } from '../../../ui/status/serial-text.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import type { LimitChange, LimitPreview } from './revision-acts.js';

type Side = LimitChange['before'];

const EFFECTS: Readonly<Record<LimitChange['effect'], string>> = {
  over: 'Puts it over its limit',
  'not-authorised': 'Forbids it here',
  'not-verified': 'Leaves it not verified',
  short: 'Brings it near its limit',
  less: 'Leaves it less',
  more: 'Leaves it more',
  document: 'Changes the document alone',
};

function limitText({ kind, cycleLimit, minuteLimit, goodThrough }: Side): string {
  if (kind === 'not-limited') return 'Not limited';
  if (kind === 'not-authorised') return 'Not authorised';
  const told = [
    ...(cycleLimit === null ? [] : [`${thousands(cycleLimit)} cycles`]),
    ...(minuteLimit === null ? [] : [`${hoursMinutes(minuteLimit)} h`]),
    ...(goodThrough === null ? [] : [`through ${calendarDate(goodThrough)}`]),
  ];
  return told.length === 0 ? 'Not known' : told.join(', ');
}

function leftText(side: Side): string {
  if (side.kind === 'not-limited') return 'No limit';
  const told = [
    ...(side.remainingCycles === null ? [] : [remainingCycles(side.remainingCycles)]),
    ...(side.remainingMinutes === null ? [] : [remainingMinutes(side.remainingMinutes)]),
    ...(side.remainingDays === null ? [] : [remainingDays(side.remainingDays)]),
  ];
  return told.length === 0 ? (side.reason ?? 'Not known') : told.join(', ');
}

function BeforeAfter({
  change,
  tell,
}: {
  readonly change: LimitChange;
  readonly tell: (side: Side) => string;
}) {
  const [before, after] = [tell(change.before), tell(change.after)];
  if (before === after) return before;
  return (
    <span className="before-after">
      <span className="quiet">{before}</span>
      <span>
        <span aria-hidden="true">→ </span>
        <span className="visually-hidden">then </span>
        <strong>{after}</strong>
      </span>
    </span>
  );
}

/** Less or more is left though the limit at its own rating stays: what ran at another rating counts otherwise. */
const isByOtherRating = ({ before, after }: LimitChange): boolean =>
  before.kind === 'limited' &&
  after.kind === 'limited' &&
  limitText(before) === limitText(after) &&
  leftText(before) !== leftText(after);

function usedText({ cyclesUsed, minutesUsed }: LimitChange): string {
  const told = [
    ...(cyclesUsed === null ? [] : [`${exactCycles(cyclesUsed)} cycles`]),
    ...(minutesUsed === null ? [] : [`${hoursMinutes(minutesUsed)} h`]),
  ];
  return told.length === 0 ? 'Not known' : told.join(', ');
}

const COLUMNS: readonly Column<LimitChange>[] = [
  {
    id: 'effect',
    header: 'What it does',
    cell: ({ effect, after }) => (
      <StatusMark
        status={markOf(after.status)}
        word={
          effect === 'document' && after.kind === 'unsubstantiated' ? 'Stays not verified' : EFFECTS[effect]
        }
      />
    ),
  },
  {
    id: 'part',
    header: 'Part',
    namesRow: true,
    cell: ({ componentId, description, serialNumber, partNumber }) => (
      <span className="changed-part">
        {description}
        <RouteLink href={`/components/${componentId}`}>
          <SerialText>{serialNumber}</SerialText>
        </RouteLink>
        <span className="small quiet">
          P/N <SerialText>{partNumber}</SerialText>
        </span>
      </span>
    ),
    sortBy: ({ serialNumber }) => serialNumber,
  },
  {
    id: 'where',
    header: 'Engine and place',
    cell: ({ engineId, engineSerial, airframe, positionNumber, ratingCode }) => (
      <span className="changed-part">
        {engineSerial === null ? (
          'In no engine'
        ) : (
          <RouteLink href={`/components/${engineId}`}>
            <SerialText>{engineSerial}</SerialText>
          </RouteLink>
        )}
        <span className="small quiet">
          {airframe === null
            ? 'On no airframe'
            : `${airframe}${positionNumber === null ? '' : `, position ${positionNumber}`}`}
          {ratingCode !== null && `, rating ${ratingCode}`}
        </span>
      </span>
    ),
    sortBy: ({ airframe, positionNumber }) => (airframe === null ? null : `${airframe} ${positionNumber}`),
  },
  { id: 'used', header: 'Used', cell: usedText },
  { id: 'limit', header: 'Limit', cell: (change) => <BeforeAfter change={change} tell={limitText} /> },
  {
    id: 'left',
    header: 'Left',
    cell: (change) => (
      <>
        <BeforeAfter change={change} tell={leftText} />
        {isByOtherRating(change) && (
          <span className="small quiet">By what it ran at another rating, whose limit changes</span>
        )}
      </>
    ),
    sortBy: ({ after }) => after.remainingCycles,
  },
  {
    id: 'source',
    header: 'Governed by',
    cell: ({ after: { document, revision } }) =>
      document === null ? 'No document' : `${document}, revision ${revision}`,
  },
];

/** What a revision would change, the worst first. */
export function RevisionChanges({ preview }: { readonly preview: LimitPreview }) {
  const { changes, looked, later, effectiveOn, partNumbersNotHeld } = preview;
  const over = changes.filter(({ effect }) => effect === 'over' || effect === 'not-authorised').length;
  const short = changes.filter(({ effect }) => effect === 'short').length;
  return (
    <section className="stack revision-changes" aria-label="What it changes">
      <h2 className="section-heading">What it changes</h2>
      <p>
        {counted(looked, 'serial')} looked at;{' '}
        <strong>{counted(changes.length, 'life', 'lives')} changed</strong>
        {over > 0 && `, ${over} put over or forbidden`}
        {short > 0 && `, ${short} brought near the limit`}. Nothing is stored yet.
      </p>
      {later && (
        <Notice kind="note">
          It is effective on {calendarDate(effectiveOn)}. Shown is each life by it with what is used now;
          lives and what is due follow it from that day on, by themselves.
        </Notice>
      )}
      {over > 0 && !later && (
        <Notice kind="caution">
          Once accepted, {counted(over, 'part')} may not fly on. Where one is installed, no release can be
          signed until it is replaced.
        </Notice>
      )}
      {partNumbersNotHeld.length > 0 && (
        <p>
          No component has the part number{partNumbersNotHeld.length === 1 ? '' : 's'}{' '}
          {partNumbersNotHeld.join(', ')}.
        </p>
      )}
      <DataTable
        caption="Lives it changes"
        captionHidden
        columns={COLUMNS}
        rows={changes}
        rowKey={({ componentId }) => componentId}
        empty={
          <EmptyState>
            It changes no life: nobody has such parts, or a newer revision or a lower limit governs already.
          </EmptyState>
        }
      />
    </section>
  );
}
