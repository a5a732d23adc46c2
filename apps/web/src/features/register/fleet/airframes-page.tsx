import { useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { hoursMinutes, thousands } from '../../../format/hours.js';
import { useMay } from '../../../server/authority.js';
import { type Airframe, airframesQuery, airframeTypesQuery } from '../../../server/fleet.js';
import { ActionLink } from '../../../ui/actions/action-link.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { announce } from '../../../ui/messages/announcements.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { readState } from '../../../ui/table/read-state.js';
import { RegisterFrame } from '../register-frame.js';
import { AirframeForm } from './airframe-form.js';

const COLUMNS: readonly Column<Airframe>[] = [
  {
    id: 'registration',
    header: 'Registration',
    cell: ({ id, registration }) => (
      <RouteLink href={`/register/airframes/${id}`}>
        <span className="serial">{registration}</span>
      </RouteLink>
    ),
    sortBy: ({ registration }) => registration,
    namesRow: true,
  },
  {
    id: 'serial',
    header: 'Serial number',
    cell: ({ serialNumber }) => <span className="serial">{serialNumber}</span>,
    sortBy: ({ serialNumber }) => serialNumber,
  },
  { id: 'type', header: 'Type', cell: ({ type }) => type, sortBy: ({ type }) => type },
  { id: 'rules', header: 'Rule set', cell: ({ ruleSet }) => ruleSet, sortBy: ({ ruleSet }) => ruleSet },
  { id: 'owner', header: 'Owner', cell: ({ owner }) => owner, sortBy: ({ owner }) => owner },
  {
    id: 'hours',
    header: 'Hours',
    align: 'figures',
    cell: ({ minutes }) => (minutes === null ? 'Not verified' : hoursMinutes(minutes)),
    sortBy: ({ minutes }) => minutes,
  },
  {
    id: 'flights',
    header: 'Flights',
    align: 'figures',
    cell: ({ flights }) => (flights === null ? 'Not verified' : thousands(flights)),
    sortBy: ({ flights }) => flights,
  },
];

/** The airframes. */
export function AirframesPage() {
  const airframes = useQuery(airframesQuery);
  const types = useQuery(airframeTypesQuery);
  const may = useMay('keep-records');
  const navigate = useNavigate();
  const noType = types.data?.length === 0;
  return (
    <RegisterFrame
      title="Airframes"
      add={{
        word: 'Add an airframe',
        offBecause: noType ? 'Off: an airframe has a type. Enter an airframe type first.' : null,
        form: (close) => (
          <AirframeForm
            onAdded={({ id, registration }) => {
              announce(`${registration} was added with its positions.`);
              close();
              void navigate({ to: '/register/airframes/$airframeId', params: { airframeId: id } });
            }}
          />
        ),
      }}
    >
      <DataTable
        caption="Airframes"
        captionHidden
        columns={COLUMNS}
        rows={airframes.data ?? []}
        rowKey={({ id }) => id}
        order={{ column: 'registration', descending: false }}
        state={readState(airframes)}
        empty={
          noType ? (
            <EmptyState
              action={<ActionLink href="/register/airframe-types">Go to Airframe types</ActionLink>}
            >
              No airframe is recorded. An airframe has a type: enter an airframe type first.
            </EmptyState>
          ) : (
            <EmptyState>No airframe is recorded{may ? '. Add one above.' : '.'}</EmptyState>
          )
        }
      />
    </RegisterFrame>
  );
}
