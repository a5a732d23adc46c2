import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { remainingCycles, remainingMinutes } from '../../format/remaining.js';
import type { ComponentView } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { AsOfBar } from '../../ui/asof/as-of-bar.js';
import { Answered } from '../../ui/messages/answered.js';
import { Tabs } from '../../ui/overlay/tabs.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { goodThroughText } from '../../ui/status/calendar-words.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { ComponentActions } from './component-actions.js';
import { CountersSince, Gaps, Identity, OwnLife, WhereItIs } from './component-facts.js';
import { componentAtQuery } from './component-queries.js';
import { kindWord } from './component-words.js';
import { endText } from './life-words.js';
import { limitedPlaces } from './limited-parts.js';
import { LimitsTable } from './limits-table.js';
import { PartsTree } from './parts-tree.js';
import { PlacesTable } from './places-table.js';
import './component.css';

type Limiter = NonNullable<ComponentView['limiter']>;

function leftOf({
  remainingCycles: cycles,
  remainingMinutes: minutes,
  remainingDays: days,
  goodThrough,
}: Limiter): string {
  if (cycles !== null) return remainingCycles(cycles);
  if (minutes !== null) return remainingMinutes(minutes);
  return goodThrough === null ? 'Not verified' : goodThroughText(goodThrough, days);
}

function NamedPart({
  limiter: { componentId, description, serialNumber, flagged },
}: {
  readonly limiter: Limiter;
}) {
  return (
    <>
      {description}{' '}
      <RouteLink href={`/components/${componentId}`}>
        <SerialText>{serialNumber}</SerialText>
      </RouteLink>
      {flagged && <span className="quiet"> (worst case, accepted)</span>}
    </>
  );
}

function Tightest({ limiter, limiterByDate: soonest }: Pick<ComponentView, 'limiter' | 'limiterByDate'>) {
  if (limiter === null) return null;
  return (
    <>
      <p>
        Tightest: <strong>{leftOf(limiter)}</strong>, <NamedPart limiter={limiter} />
        {limiter.reason !== null && <span className="quiet"> {limiter.reason}</span>}
      </p>
      {soonest !== null && soonest.reason === null && (
        <p>
          Ends first: <strong>{endText(soonest)}</strong>
          {soonest.componentId !== limiter.componentId && (
            <>
              , <NamedPart limiter={soonest} />
            </>
          )}
          {soonest.projectedOn !== null && <span className="quiet"> {soonest.basis}</span>}
        </p>
      )}
    </>
  );
}

interface PartsProps {
  readonly component: ComponentView;
  readonly named: string;
}

function Sections({ component, named }: PartsProps) {
  const { tab } = useSearch({ from: '/signed-in/components/$componentId' });
  const navigate = useNavigate({ from: '/components/$componentId' });
  const hasSlots = component.slots.length > 0;
  const parts: { id: string; title: string; count?: number; content: ReactNode }[] = [
    ...(hasSlots
      ? [
          {
            id: 'limits',
            title: 'Limits',
            count: limitedPlaces(component.slots).length,
            content: <LimitsTable label={`Limits of ${named}`} slots={component.slots} />,
          },
          {
            id: 'parts',
            title: 'Parts',
            content: <PartsTree label={`Parts of ${named}`} slots={component.slots} />,
          },
        ]
      : []),
    {
      id: 'places',
      title: 'Places',
      content: <PlacesTable id={component.id} label={`Where ${named} was`} />,
    },
  ];
  const [only, ...more] = parts;
  if (only !== undefined && more.length === 0)
    return (
      <section className="stack" aria-label={only.title}>
        <h2 className="section-heading">{only.title}</h2>
        {only.content}
      </section>
    );
  const selected = parts.some(({ id }) => id === tab) ? (tab ?? '') : (parts[0]?.id ?? 'places');
  return (
    <Tabs
      label={named}
      parts={parts}
      selected={selected}
      onSelect={(id) =>
        void navigate({ search: (before) => ({ ...before, tab: id }), replace: true, resetScroll: false })
      }
    />
  );
}

/** One engine, module, part, pod or APU: what it is, where, how much it has run, and what is left. */
export function ComponentPage() {
  const { componentId } = useParams({ from: '/signed-in/components/$componentId' });
  const { at } = useSearch({ from: '/signed-in/components/$componentId' });
  const navigate = useNavigate({ from: '/components/$componentId' });
  const query = useQuery(componentAtQuery(componentId, at));
  const component = query.data;
  const title = component === undefined ? 'Component' : kindWord(component.kind);
  return (
    <div className="stack component-page" key={componentId}>
      <PageHeading
        title={title}
        serial={component?.serialNumber}
        below={
          component && (
            <>
              <WhereItIs component={component} at={at} />
              <Tightest limiter={component.limiter} limiterByDate={component.limiterByDate} />
            </>
          )
        }
        actions={component && <ComponentActions component={component} at={at} />}
      />
      <AsOfBar
        key={at ?? 'now'}
        at={at}
        onAt={(next) =>
          void navigate({
            search: ({ at: _, ...rest }) => (next === undefined ? rest : { ...rest, at: next }),
          })
        }
      />
      <Answered query={query} doing="Reading the component" lines={8}>
        {(found) => (
          <>
            <Identity component={found} />
            <CountersSince component={found} at={at} />
            <OwnLife component={found} />
            <Gaps component={found} />
            <Sections
              component={found}
              named={`${found.kind === 'apu' ? title : title.toLowerCase()} ${found.serialNumber}`}
            />
          </>
        )}
      </Answered>
    </div>
  );
}
