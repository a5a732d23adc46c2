import { exactCycles, sharePercent } from '../../format/cycles.js';
import { hoursMinutes, thousands } from '../../format/hours.js';
import { remainingCycles, remainingMinutes } from '../../format/remaining.js';
import { calendarDate } from '../../format/utc-date.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { calendarText, goodThroughText } from '../../ui/status/calendar-words.js';
import { markOfLife } from '../../ui/status/life-status.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import type { SheetPart } from './life-status-data.js';

const UNKNOWN = 'Not known';

/** Lines of a cell, each under its own key. */
function Lines({ of }: { readonly of: readonly string[] }) {
  return of.map((line) => (
    <span key={line} className="sheet-line">
      {line}
    </span>
  ));
}

function limitLines({ limits }: SheetPart): readonly string[] {
  return limits.map(({ ratingCode, authorisation, cycles, minutes, calendar }) => {
    const at = ratingCode ?? 'Any rating';
    if (authorisation !== 'limited')
      return `${at}: ${authorisation === 'not-authorised' ? 'not authorised' : 'not limited'}`;
    const told = [
      ...(cycles === null ? [] : [`${thousands(cycles)} cycles`]),
      ...(minutes === null ? [] : [`${hoursMinutes(minutes)} h`]),
      ...calendar.map(calendarText),
    ];
    return `${at}: ${told.join(', ')}`;
  });
}

const GOVERNS = {
  cycles: 'cycles',
  minutes: 'hours',
  days: 'days',
  authorisation: 'what is allowed',
} as const;

function sourceLines({ life }: SheetPart): readonly string[] {
  return (life?.sources ?? []).map(({ basis, document, revision, effectiveOn, governs }) => {
    const role =
      governs.length === 0 ? '' : `, governs ${governs.map((each) => GOVERNS[each]).join(' and ')}`;
    const kind = basis === 'directive' ? 'Directive ' : '';
    return `${kind}${document}, revision ${revision} of ${calendarDate(effectiveOn)}${role}`;
  });
}

function useLines({ usedAt }: SheetPart): readonly string[] {
  return usedAt.map(
    ({ ratingCode, cycles, minutes }) =>
      `${ratingCode ?? 'Rating not known'}: ${cycles === null ? 'cycles not known' : `${exactCycles(cycles)} cycles`}, ${minutes === null ? 'hours not known' : `${hoursMinutes(minutes)} h`}`,
  );
}

function leftLines({ life }: SheetPart): readonly string[] {
  if (life === null || life.kind === 'unsubstantiated') return [UNKNOWN];
  if (life.kind !== 'limited') return [life.kind === 'not-limited' ? 'Not limited' : 'Not authorised here'];
  return [
    ...(life.remainingCycles === null ? [] : [remainingCycles(life.remainingCycles)]),
    ...(life.remainingMinutes === null ? [] : [remainingMinutes(life.remainingMinutes)]),
    ...(life.goodThrough === null ? [] : [goodThroughText(life.goodThrough, life.remainingDays)]),
  ];
}

const TRACE = { verified: 'On record', 'worst-case': 'Worst case', 'not-verified': 'Not verified' } as const;

const COLUMNS: readonly Column<SheetPart>[] = [
  {
    id: 'part',
    header: 'Module and part',
    namesRow: true,
    cell: ({ module, place, description, partNumber, serialNumber, componentId }) => (
      <span className="sheet-part">
        <span className="small quiet">{module}</span>
        {description === place ? place : `${place}: ${description}`}
        {componentId !== null && (
          <RouteLink href={`/components/${componentId}`}>
            <SerialText>{serialNumber}</SerialText>
          </RouteLink>
        )}
        {partNumber !== '' && (
          <span className="small quiet">
            P/N <SerialText>{partNumber}</SerialText>
          </span>
        )}
      </span>
    ),
    sortBy: ({ place }) => place,
  },
  {
    id: 'limit',
    header: 'Limit, by rating',
    cell: (part) => (
      <>
        <Lines of={limitLines(part)} />
        <span className="small quiet">
          <Lines of={sourceLines(part)} />
        </span>
      </>
    ),
  },
  {
    id: 'since',
    header: 'Since new',
    align: 'figures',
    cell: ({ sinceNew: { minutes, cycles } }) => (
      <Lines
        of={[
          minutes === null ? 'Hours not known' : `${hoursMinutes(minutes)} h`,
          cycles === null ? 'Cycles not known' : `${exactCycles(cycles)} cyc`,
        ]}
      />
    ),
  },
  {
    id: 'used',
    header: 'Used, by rating',
    cell: (part) => (
      <>
        <Lines of={useLines(part)} />
        {part.life?.used != null && (
          <strong className="sheet-line">{sharePercent(part.life.used)} of its life</strong>
        )}
      </>
    ),
  },
  {
    id: 'left',
    header: 'Left',
    cell: (part) => (
      <strong>
        <Lines of={leftLines(part)} />
      </strong>
    ),
    sortBy: ({ life }) => life?.remainingCycles ?? null,
  },
  {
    id: 'end',
    header: 'Ends',
    cell: ({ life }) =>
      life?.kind !== 'limited' ? (
        ''
      ) : (
        <>
          {life.projectedOn !== null && <span className="sheet-line">{calendarDate(life.projectedOn)}</span>}
          <span className="small quiet">{life.basis}</span>
        </>
      ),
    sortBy: ({ life }) => life?.projectedOn ?? null,
  },
  {
    id: 'standing',
    header: 'Status and trace',
    cell: ({ life, trace, flags }) => (
      <span className="sheet-part">
        <StatusMark
          status={markOfLife(life)}
          word={life?.kind === 'not-limited' ? 'Not limited' : undefined}
        />
        <span>Trace: {TRACE[trace]}</span>
        <span className="small">
          <Lines of={flags} />
        </span>
      </span>
    ),
    sortBy: ({ life }) => life?.status ?? 'not-verified',
  },
];

/** The limited parts, in the order they are built in. */
export function SheetTable({
  parts,
  label,
}: {
  readonly parts: readonly SheetPart[];
  readonly label: string;
}) {
  if (parts.length === 0)
    return <EmptyState>No life-limited part is recorded in it, so there is no status to tell.</EmptyState>;
  return (
    <div className="life-sheet">
      <DataTable
        caption={label}
        columns={COLUMNS}
        rows={parts}
        rowKey={({ componentId, module, place }) => componentId ?? `${module} ${place}`}
      />
    </div>
  );
}
