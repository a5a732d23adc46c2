import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { counted } from '../../format/counts.js';
import { useMay } from '../../server/authority.js';
import type { BoardAirframe } from '../../server/wire.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { TextField } from '../../ui/fields/text-field.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { markOf } from '../../ui/status/near.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Status } from '../../ui/status/statuses.js';
import { AirframeRow } from './airframe-row.js';
import { boardQuery } from './positions-queries.js';
import './positions.css';

const WORST_FIRST: readonly Status[] = [
  'over-limit',
  'in-tolerance',
  'not-verified',
  'soon',
  'plan',
  'in-limits',
];

/** How many engines stand at each status, the worst first. */
function tally(airframes: readonly BoardAirframe[]): readonly (readonly [Status, number])[] {
  const marks = airframes.flatMap(({ positions }) =>
    positions.flatMap(({ engine, kind }) =>
      engine === null || kind === 'apu' ? [] : [markOf(engine.status)],
    ),
  );
  return WORST_FIRST.map(
    (status) => [status, marks.filter((mark) => mark === status).length] as const,
  ).filter(([, count]) => count > 0);
}

function holds({ airframe, positions }: BoardAirframe, wanted: string): boolean {
  const words = [
    airframe.registration,
    airframe.type,
    ...positions.map(({ engine }) => engine?.serialNumber ?? ''),
  ];
  return words.some((word) => word.toLowerCase().includes(wanted));
}

function Tally({ airframes }: { readonly airframes: readonly BoardAirframe[] }) {
  const empty = airframes.flatMap(({ positions }) =>
    positions.filter(({ engine, kind }) => engine === null && kind === 'engine'),
  ).length;
  return (
    <ul className="plain-list row tally" aria-label="Engines by status">
      {tally(airframes).map(([status, count]) => (
        <li key={status}>
          <StatusMark status={status} /> {count}
        </li>
      ))}
      {empty > 0 && <li>{counted(empty, 'empty position')}</li>}
    </ul>
  );
}

function Board({ airframes }: { readonly airframes: readonly BoardAirframe[] }) {
  const { find = '' } = useSearch({ from: '/signed-in/positions' });
  const navigate = useNavigate({ from: '/positions' });
  const wanted = useDeferredValue(find.trim().toLowerCase());
  const shown = wanted === '' ? airframes : airframes.filter((row) => holds(row, wanted));
  return (
    <>
      <Tally airframes={airframes} />
      {airframes.length > 3 && (
        <search className="board-find no-print">
          <TextField
            label="Find an airframe or an engine"
            type="search"
            mono
            value={find}
            onChange={({ target }) =>
              void navigate({ search: target.value === '' ? {} : { find: target.value }, replace: true })
            }
          />
          <p className="quiet small" role="status">
            {wanted === '' ? '' : `${shown.length} of ${counted(airframes.length, 'airframe')} shown`}
          </p>
        </search>
      )}
      {shown.length === 0 ? (
        <EmptyState>No airframe, type or engine matches “{find}”.</EmptyState>
      ) : (
        <ul className="plain-list board-rows">
          {shown.map((row) => (
            <AirframeRow key={row.airframe.id} row={row} />
          ))}
        </ul>
      )}
    </>
  );
}

function NothingYet() {
  const may = useMay('keep-records');
  return (
    <EmptyState action={may ? <ActionLink href="/register">Open the register</ActionLink> : undefined}>
      No airframe is recorded. Enter in the register, in this order: an airframe type with its positions, an
      airframe, an engine model with its ratings, then the engines and where they are installed.
      {!may && ' The records office or an administrator can do this.'}
    </EmptyState>
  );
}

/** Every airframe with what stands at its positions. */
export function PositionsPage() {
  const query = useQuery(boardQuery);
  return (
    <>
      <PageHeading
        title="Positions"
        below={
          query.data === undefined || query.data.length === 0 ? undefined : (
            <p>{counted(query.data.length, 'airframe')}, as the records stand now</p>
          )
        }
      />
      <Answered query={query} doing="Reading the positions" lines={8}>
        {(airframes) => (airframes.length === 0 ? <NothingYet /> : <Board airframes={airframes} />)}
      </Answered>
    </>
  );
}
