import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { componentChoiceQuery } from '../../server/components.js';
import { airframesQuery } from '../../server/fleet.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { ComboField } from '../../ui/fields/combo-field.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { PageHeading } from '../../ui/page/page-heading.js';

/** Finds a component by typing, and opens its history. */
function ComponentChoice() {
  const [typed, setTyped] = useState('');
  const found = useQuery({ ...componentChoiceQuery({ search: typed }), placeholderData: keepPreviousData });
  const navigate = useNavigate();
  const open = (componentId: string) =>
    void navigate({ to: '/history/components/$componentId', params: { componentId } });
  return (
    <section className="stack">
      <h2 className="section-heading">Of a component</h2>
      <ComboField
        label="Serial or part number"
        hint="Engine, module, part, pod or auxiliary power unit"
        mono
        searching={found.isFetching}
        options={(found.data?.rows ?? []).map(({ id, serialNumber, description, place }) => ({
          id,
          label: serialNumber,
          detail: `${description}, ${place.label}`,
        }))}
        value={null}
        onTyped={setTyped}
        // A serial typed in full may be the beginning of a longer one: only a pick opens it.
        onChoose={() => undefined}
        onPick={open}
      />
      {found.error !== null && (
        <ProblemPanel
          error={found.error}
          doing="Looking for components"
          onRetry={() => void found.refetch()}
        />
      )}
    </section>
  );
}

/** Whose history. */
export function HistoryPage() {
  const airframes = useQuery(airframesQuery);
  return (
    <>
      <PageHeading
        title="History"
        below={<p>Everything that happened, in order, with the totals then and who recorded it.</p>}
      />
      <section className="stack">
        <h2 className="section-heading">Of an airframe</h2>
        <Answered query={airframes} doing="Reading the airframes">
          {(all) =>
            all.length === 0 ? (
              <EmptyState action={<ActionLink href="/register">Go to Register</ActionLink>}>
                No airframe is on record yet.
              </EmptyState>
            ) : (
              <ul className="history-list">
                {all.map(({ id, registration, type }) => (
                  <li key={id}>
                    <RouteLink href={`/history/airframes/${id}`}>
                      <span className="serial">{registration}</span>
                    </RouteLink>{' '}
                    <span className="quiet">{type}</span>
                  </li>
                ))}
              </ul>
            )
          }
        </Answered>
      </section>
      <ComponentChoice />
    </>
  );
}
