import { useQuery } from '@tanstack/react-query';
import { useParams, useSearch } from '@tanstack/react-router';
import { type ReactNode, useState } from 'react';
import { calendarDate } from '../../../format/utc-date.js';
import { sinceText } from '../../../format/when.js';
import { type Component, componentQuery } from '../../../server/components.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { FactList } from '../../../ui/page/fact-list.js';
import { Counter } from '../../../ui/status/counter.js';
import { RegisterFrame } from '../register-frame.js';
import { ASKED, ComponentActs, type DoneAct, DoneNote } from './component-acts.js';
import { kindWord } from './component-kinds.js';
import { FactsList } from './facts-list.js';
import { Slots } from './slot-list.js';

interface OfProps {
  readonly component: Component;
}

function Identity({ component }: OfProps) {
  const { place, manufacturedOn, lessor } = component;
  const facts: readonly (readonly [string, ReactNode])[] = [
    ['Kind', kindWord(component.kind)],
    [
      'Part number',
      <span key="part" className="serial">
        {component.partNumber}
      </span>,
    ],
    ['Description', component.description],
    ['Maker', component.maker],
    ['Model', component.engineModel ?? 'None'],
    ['Rating', component.ratingCode ?? 'None recorded'],
    ['Mandatory life', component.lifeLimited ? 'Yes' : 'No'],
    ['Owner', component.owner],
    ...(lessor === null ? [] : [['Lessor', lessor] as const]),
    ['Manufactured on', manufacturedOn === null ? 'Not recorded' : calendarDate(manufacturedOn)],
    [
      'Where',
      place.since === null ? place.label : `${place.label}, since ${sinceText(place.since, place.precision)}`,
    ],
  ];
  return <FactList facts={facts} />;
}

/** A component's counter is shown in whole cycles; the exact parts stand in its history. */
const cyclesUp = (cycles: Component['counters']['sinceNew']['cycles']): number | null =>
  cycles === null ? null : Math.ceil(cycles.units / cycles.denominator);

function Built({ component }: OfProps) {
  const { ask } = useSearch({ from: '/signed-in/register/components/$componentId' });
  const [done, setDone] = useState<DoneAct | null>(null);
  const { sinceNew } = component.counters;
  return (
    <div className="stack">
      <Identity component={component} />
      <Counter minutes={sinceNew.minutes} cycles={cyclesUp(sinceNew.cycles)} since="Since new" />
      <ComponentActs component={component} asked={ASKED.find((act) => act === ask)} onDone={setDone} />
      {done !== null && <DoneNote key={done.what} done={done} onClose={() => setDone(null)} />}
      <h2 className="section-heading">What it came with</h2>
      <FactsList componentId={component.id} onVoided={(what, recorded) => setDone({ what, recorded })} />
      <h2 className="section-heading">Places in it</h2>
      {component.slots.length === 0 ? (
        <EmptyState>Nothing can be installed in it: it was recorded without places.</EmptyState>
      ) : (
        <Slots
          parent={component.serialNumber}
          slots={component.slots}
          airframeKnown={component.place.airframeId !== null}
        />
      )}
      <p className="row no-print">
        <RouteLink href={`/components/${component.id}`}>Counters, life and parts</RouteLink>
        <RouteLink href={`/history/components/${component.id}`}>History</RouteLink>
      </p>
    </div>
  );
}

/** A component in the register: identity, what it came with, and what is built into it. */
export function RegisterComponentPage() {
  const { componentId } = useParams({ from: '/signed-in/register/components/$componentId' });
  const component = useQuery(componentQuery(componentId));
  return (
    <RegisterFrame
      title={component.data === undefined ? 'Component' : kindWord(component.data.kind)}
      serial={component.data?.serialNumber}
    >
      <Answered query={component} doing="Reading the component" lines={8}>
        {(data) => <Built key={data.id} component={data} />}
      </Answered>
    </RegisterFrame>
  );
}
