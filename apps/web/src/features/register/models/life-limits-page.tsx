import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue, useState } from 'react';
import { counted } from '../../../format/counts.js';
import { hoursMinutes, thousands } from '../../../format/hours.js';
import { calendarDate } from '../../../format/utc-date.js';
import { useMay } from '../../../server/authority.js';
import { engineModelsQuery, type LifeLimit, lifeLimitsQuery } from '../../../server/fleet.js';
import { ActionLink } from '../../../ui/actions/action-link.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { calendarText } from '../../../ui/status/calendar-words.js';
import { Voided } from '../../../ui/status/voided.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { readState } from '../../../ui/table/read-state.js';
import { RegisterFrame } from '../register-frame.js';
import { AUTHORISATIONS, LifeLimitForm } from './life-limit-form.js';
import './revision.css';

function limitText(limit: LifeLimit): string {
  const { authorisation, cycles, minutes, calendarSpan, calendarUnit, calendarFrom, monthRule } = limit;
  if (authorisation !== 'limited')
    return AUTHORISATIONS.find(({ value }) => value === authorisation)?.label ?? authorisation;
  return [
    cycles === null ? '' : `${thousands(cycles)} cycles`,
    minutes === null ? '' : `${hoursMinutes(minutes)} h`,
    calendarSpan === null || calendarUnit === null || calendarFrom === null
      ? ''
      : calendarText({ span: calendarSpan, unit: calendarUnit, countedFrom: calendarFrom, monthRule }),
  ]
    .filter(Boolean)
    .join(', ');
}

const STANDINGS: Readonly<Record<NonNullable<LifeLimit['standing']>, string>> = {
  'in-force': 'In force',
  later: 'From that day on',
  'not-governing': 'Another governs',
};

/** Whether a directive in force states less than this limit, which then governs no life by itself. */
const isLowered = (limit: LifeLimit, all: readonly LifeLimit[]): boolean =>
  limit.standing === 'in-force' &&
  limit.basis !== 'directive' &&
  all.some(
    ({ standing, basis, partNumber, engineModelId, ratingCode, cycles, minutes }) =>
      standing === 'in-force' &&
      basis === 'directive' &&
      partNumber === limit.partNumber &&
      engineModelId === limit.engineModelId &&
      (ratingCode === null || ratingCode === limit.ratingCode) &&
      ((cycles !== null && cycles < (limit.cycles ?? Number.POSITIVE_INFINITY)) ||
        (minutes !== null && minutes < (limit.minutes ?? Number.POSITIVE_INFINITY))),
  );

function standingText(limit: LifeLimit, all: readonly LifeLimit[]): string {
  if (limit.standing === null) return 'Voided';
  return isLowered(limit, all) ? 'Lowered by a directive' : STANDINGS[limit.standing];
}

const columnsOf = (all: readonly LifeLimit[]): readonly Column<LifeLimit>[] => [
  {
    id: 'part',
    header: 'Part number',
    cell: ({ partNumber, voided, voidReason }) => (
      <>
        <span className="serial">{partNumber}</span>
        {voided && <Voided reason={voidReason} />}
      </>
    ),
    sortBy: ({ partNumber }) => partNumber,
    namesRow: true,
  },
  {
    id: 'model',
    header: 'Engine model',
    cell: ({ engineModel }) => engineModel,
    sortBy: ({ engineModel }) => engineModel,
  },
  {
    id: 'rating',
    header: 'Rating',
    cell: ({ ratingCode }) => (ratingCode === null ? 'Any' : <span className="serial">{ratingCode}</span>),
    sortBy: ({ ratingCode }) => ratingCode,
  },
  { id: 'limit', header: 'Limit', cell: limitText, sortBy: ({ cycles }) => cycles },
  {
    id: 'document',
    header: 'Document',
    cell: ({ document, basis }) => (
      <>
        {basis === 'directive' && <strong>Directive</strong>} {document}
      </>
    ),
    sortBy: ({ document }) => document,
  },
  {
    id: 'revision',
    header: 'Revision',
    cell: ({ revision }) => revision,
    sortBy: ({ revision }) => revision,
  },
  {
    id: 'effective',
    header: 'Effective on',
    cell: ({ effectiveOn }) => calendarDate(effectiveOn),
    sortBy: ({ effectiveOn }) => effectiveOn,
  },
  {
    id: 'standing',
    header: 'Standing',
    cell: (limit) => standingText(limit, all),
    sortBy: (limit) => standingText(limit, all),
  },
];

const holds = (limit: LifeLimit, wanted: string): boolean =>
  [limit.partNumber, limit.engineModel, limit.ratingCode ?? '', limit.document].some((text) =>
    text.toLowerCase().includes(wanted),
  );

/** Life limits by part number, model and rating. */
export function LifeLimitsPage() {
  const limits = useQuery(lifeLimitsQuery);
  const models = useQuery(engineModelsQuery);
  const may = useMay('keep-records');
  const { find } = useSearch({ from: '/signed-in/register/life-limits' });
  const [typed, setTyped] = useState(find ?? '');
  const wanted = useDeferredValue(typed.trim().toLowerCase());
  const navigate = useNavigate();
  const rows = (limits.data ?? []).filter((limit) => wanted === '' || holds(limit, wanted));
  const noModel = models.data?.length === 0;
  const look = (next: string) => {
    setTyped(next);
    void navigate({ to: '/register/life-limits', search: next === '' ? {} : { find: next }, replace: true });
  };
  return (
    <RegisterFrame
      title="Life limits"
      add={{
        word: 'Add a life limit',
        offBecause: noModel ? 'Off: a limit belongs to an engine model. Enter an engine model first.' : null,
        form: (close) => (
          <LifeLimitForm
            onAdded={({ partNumber }) => {
              announce(`The limit of ${partNumber} was added. Lives were computed again.`);
              close();
            }}
          />
        ),
      }}
    >
      <search className="row limit-search">
        <TextField
          label="Find"
          hint="Part number, model, rating or document"
          type="search"
          value={typed}
          onChange={(event) => look(event.target.value)}
        />
        {limits.data !== undefined && <p role="status">{counted(rows.length, 'limit')}</p>}
        {may && (
          <ActionLink href="/register/life-limits/revision">Enter a revision or a directive</ActionLink>
        )}
      </search>
      <DataTable
        caption="Life limits"
        captionHidden
        columns={columnsOf(limits.data ?? [])}
        rows={rows}
        rowKey={({ id }) => id}
        order={{ column: 'part', descending: false }}
        struck={({ voided }) => voided}
        state={readState(limits)}
        empty={
          noModel ? (
            <EmptyState action={<ActionLink href="/register/engine-models">Go to Engine models</ActionLink>}>
              No life limit is recorded. A limit belongs to an engine model: enter an engine model first.
            </EmptyState>
          ) : (
            <EmptyState>
              {(limits.data ?? []).length > 0
                ? `No limit matches “${typed}”.`
                : `No life limit is recorded${may ? '. Add one above.' : '.'}`}
            </EmptyState>
          )
        }
      />
    </RegisterFrame>
  );
}
