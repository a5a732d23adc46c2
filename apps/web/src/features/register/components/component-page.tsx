import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { type ReactNode, useState } from 'react';
import { calendarDate } from '../../../format/utc-date.js';
import { sinceText } from '../../../format/when.js';
import { useMay } from '../../../server/authority.js';
import { type Component, componentQuery } from '../../../server/components.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { announce } from '../../../ui/messages/announcements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { FactList } from '../../../ui/page/fact-list.js';
import { Counter } from '../../../ui/status/counter.js';
import { OpeningForm } from '../openings/opening-form.js';
import { RatingForm } from '../openings/rating-form.js';
import { ResetForm } from '../openings/reset-form.js';
import { MoveForm } from '../placing/move-form.js';
import { RegisterFrame } from '../register-frame.js';
import { kindWord } from './component-kinds.js';
import { FactsList } from './facts-list.js';
import { Slots } from './slot-list.js';

type Asked = 'opening' | 'rating' | 'reset' | 'move';

const TITLES: Readonly<Record<Asked, string>> = {
  opening: 'Record an opening balance',
  rating: 'Record a rating',
  reset: 'Record an overhaul or shop visit',
  move: 'Move to a location',
};

const DONE: Readonly<Record<Asked, string>> = {
  opening: 'The opening balance was recorded.',
  rating: 'The rating was recorded.',
  reset: 'It was recorded.',
  move: 'The move was recorded.',
};

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

function Acts({ component }: OfProps) {
  const may = useMay('keep-records');
  const off = useOfflineSince() === null ? null : OFF_WHILE_OFFLINE;
  const [asked, setAsked] = useState<Asked | null>(null);
  const done = () => {
    if (asked !== null) announce(DONE[asked]);
    setAsked(null);
  };
  if (!may) return null;
  const offered: readonly Asked[] =
    component.kind === 'engine' || component.kind === 'apu'
      ? ['opening', 'rating', 'reset', 'move']
      : ['opening', 'reset', 'move'];
  return (
    <>
      <div className="row no-print">
        {offered.map((act) => (
          <Button key={act} offBecause={off} onClick={() => setAsked(act)}>
            {TITLES[act]}
          </Button>
        ))}
      </div>
      {asked !== null && (
        <SheetDialog title={TITLES[asked]} shape="sheet" open onClose={() => setAsked(null)}>
          {asked === 'opening' && (
            <OpeningForm
              subject={{ kind: 'component', id: component.id, engineModelId: component.engineModelId }}
              onAdded={done}
            />
          )}
          {asked === 'rating' && <RatingForm component={component} onDone={done} />}
          {asked === 'reset' && <ResetForm component={component} onDone={done} />}
          {asked === 'move' && <MoveForm component={component} onMoved={done} />}
        </SheetDialog>
      )}
    </>
  );
}

/** A component's counter is shown in whole cycles; the exact parts stand in its history. */
const cyclesUp = (cycles: Component['counters']['sinceNew']['cycles']): number | null =>
  cycles === null ? null : Math.ceil(cycles.units / cycles.denominator);

function Built({ component }: OfProps) {
  const { sinceNew } = component.counters;
  return (
    <div className="stack">
      <Identity component={component} />
      <Counter minutes={sinceNew.minutes} cycles={cyclesUp(sinceNew.cycles)} since="Since new" />
      <Acts component={component} />
      <h2 className="section-heading">What it came with</h2>
      <FactsList componentId={component.id} />
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
