import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { holderWords, useMay } from '../../../server/authority.js';
import { type Airframe, airframesQuery, positionsQuery } from '../../../server/fleet.js';
import { ActionLink } from '../../../ui/actions/action-link.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { Answered } from '../../../ui/messages/answered.js';
import { AuthorityNote } from '../../../ui/messages/authority-note.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { PageHeading } from '../../../ui/page/page-heading.js';
import { RunList } from './run-list.js';

function RunsOf({ airframe }: { readonly airframe: Airframe }) {
  const installed = useQuery(positionsQuery(airframe.id)).data?.positions ?? [];
  const positions = airframe.positions
    .filter(({ kind }) => kind === 'engine')
    .map(({ number, label }) => ({
      number,
      label: `Position ${label.replace(/^Position /, '')}`,
      serial: installed.find((place) => place.number === number)?.engine?.serialNumber ?? null,
    }));
  return (
    <RunList of={{ kind: 'airframe', id: airframe.id }} named={airframe.registration} positions={positions} />
  );
}

/** Runs of an airframe's engines on the ground, beside its flights. */
export function GroundRunsPage() {
  const airframes = useQuery(airframesQuery);
  const { airframe: asked } = useSearch({ from: '/signed-in/flights/runs' });
  const navigate = useNavigate();
  const may = useMay('keep-records');
  const all = [...(airframes.data ?? [])].sort((a, b) => a.registration.localeCompare(b.registration));
  const airframe = all.find(({ id }) => id === asked) ?? all[0];
  return (
    <>
      <PageHeading
        title="Ground runs"
        serial={airframe?.registration}
        below={!may && <AuthorityNote act="Runs are entered and voided" by={holderWords('keep-records')} />}
        actions={
          <>
            <ActionLink href="/flights/test-cells">Test cells</ActionLink>
            <ActionLink href={airframe === undefined ? '/flights' : `/flights?airframe=${airframe.id}`}>
              Flights
            </ActionLink>
          </>
        }
      />
      <Answered query={airframes} doing="Reading the airframes">
        {() =>
          airframe === undefined ? (
            <EmptyState action={<ActionLink href="/register">Go to Register</ActionLink>}>
              Runs belong to an airframe, and none is recorded. Enter an airframe first.
            </EmptyState>
          ) : (
            <div className="stack">
              <SelectField
                label="Airframe"
                value={airframe.id}
                options={all.map(({ id, registration, type }) => ({
                  value: id,
                  label: `${registration}, ${type}`,
                }))}
                onChange={({ target }) =>
                  void navigate({ to: '/flights/runs', search: { airframe: target.value } })
                }
              />
              <RunsOf key={airframe.id} airframe={airframe} />
            </div>
          )
        }
      </Answered>
    </>
  );
}
