import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { exactCycles } from '../../format/cycles.js';
import { calendarDate } from '../../format/utc-date.js';
import { momentText, sinceText } from '../../format/when.js';
import type { ComponentView, Counters, Place } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { Counter } from '../../ui/status/counter.js';
import { LifeShare } from '../../ui/status/life-share.js';
import { markOfLife } from '../../ui/status/life-status.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import { componentAtQuery } from './component-queries.js';
import { placeHref, placeWords } from './component-words.js';
import { acceptedText, endText, howWeGotIt, leftText, limitSource, usedText } from './life-words.js';
import { MendLink } from './mend-link.js';

function PlaceLink({ place }: { readonly place: Place }) {
  const href = placeHref(place);
  return href === null ? placeWords(place) : <RouteLink href={href}>{placeWords(place)}</RouteLink>;
}

/** Where that stands in which it hangs, up to the airframe or the store. */
function AndThere({ parentId, at }: { readonly parentId: string; readonly at: string | undefined }) {
  const place = useQuery(componentAtQuery(parentId, at)).data?.place;
  if (place === undefined || place.kind === 'none') return null;
  return (
    <>
      , {place.kind === 'location' ? 'in ' : ''}
      <PlaceLink place={place} />
      {place.parentId !== null && <AndThere parentId={place.parentId} at={at} />}
    </>
  );
}

interface WhereProps {
  readonly component: ComponentView;
  /** The instant shown; undefined is now. */
  readonly at: string | undefined;
}

/** Where it is, and since when, no more exactly than that is known. */
export function WhereItIs({ component: { place }, at }: WhereProps) {
  if (place.kind === 'none') return <p>No place on record</p>;
  return (
    <p>
      <PlaceLink place={place} />
      {place.since !== null && ` since ${sinceText(place.since, place.precision)}`}
      {place.parentId !== null && <AndThere parentId={place.parentId} at={at} />}
    </p>
  );
}

function Fact({ term, children }: { readonly term: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  );
}

/** What it is, and whose. */
export function Identity({ component }: { readonly component: ComponentView }) {
  const {
    maker,
    partNumber,
    description,
    engineModel,
    kind,
    ratingCode,
    owner,
    lessor,
    manufacturedOn,
    firstInstalledOn,
    podClock,
  } = component;
  return (
    <dl className="component-facts">
      <Fact term="Description">{description}</Fact>
      <Fact term="Part number">
        <SerialText>{partNumber}</SerialText>
      </Fact>
      <Fact term="Maker">{maker}</Fact>
      {engineModel !== null && (
        <Fact term={kind === 'engine' || kind === 'apu' ? 'Model' : 'For the model'}>{engineModel}</Fact>
      )}
      {kind === 'engine' && <Fact term="Rating">{ratingCode ?? 'Not recorded'}</Fact>}
      {podClock !== null && (
        <Fact term="Counts">
          {podClock === 'airframe' ? 'The airframe’s use' : 'The use of its position'}
        </Fact>
      )}
      <Fact term="Owner">{owner}</Fact>
      {lessor !== null && <Fact term="Lessor">{lessor}</Fact>}
      <Fact term="Made on">{manufacturedOn === null ? 'Not recorded' : calendarDate(manufacturedOn)}</Fact>
      {firstInstalledOn !== null && <Fact term="First installed on">{calendarDate(firstInstalledOn)}</Fact>}
    </dl>
  );
}

interface SinceProps {
  readonly since: string;
  readonly counters: Counters | null;
  /** Where the sum behind it stands. */
  readonly how: string;
}

function Since({ since, counters, how }: SinceProps) {
  if (counters === null) return null;
  return (
    <div className="since">
      <h3>{since}</h3>
      <Counter
        minutes={counters.minutes}
        cycles={counters.cycles === null ? null : exactCycles(counters.cycles)}
      />
      <RouteLink href={how}>
        How we got this<span className="visually-hidden">: {since.toLowerCase()}</span>
      </RouteLink>
    </div>
  );
}

/** Hours and cycles since each beginning that is on record. */
export function CountersSince({ component, at }: WhereProps) {
  const { sinceNew, sinceOverhaul, sinceShopVisit, sinceRepair, sinceInstalled } = component.counters;
  const how = (basis: string) =>
    `/components/${component.id}/counters?basis=${basis}${at === undefined ? '' : `&at=${at}`}`;
  return (
    <section className="stack" aria-labelledby="counters">
      <h2 id="counters" className="section-heading">
        Hours and cycles
      </h2>
      <div className="sinces">
        <Since since="Since new" counters={sinceNew} how={how('new')} />
        <Since since="Since overhaul" counters={sinceOverhaul} how={how('overhaul')} />
        <Since since="Since shop visit" counters={sinceShopVisit} how={how('shop-visit')} />
        <Since since="Since repair" counters={sinceRepair} how={how('repair')} />
        <Since since="Since installation" counters={sinceInstalled} how={how('installation')} />
      </div>
      {!component.verified && (
        <p>
          <StatusMark
            status="not-verified"
            word="Not verified: something these numbers rest on is not known"
          />
        </p>
      )}
    </section>
  );
}

/** The life of the component itself, with its arithmetic. */
export function OwnLife({ component: { id, life } }: { readonly component: ComponentView }) {
  if (life === null || life.kind === 'not-limited') return null;
  const lines = howWeGotIt(life);
  return (
    <section className="stack" aria-labelledby="life">
      <h2 id="life" className="section-heading">
        Life
      </h2>
      <LifeShare status={markOfLife(life)} used={life.used} words={usedText(life)} left={leftText(life)} />
      {life.reasons.map(({ code, text }) => (
        <p key={`${code} ${text}`}>
          {text} <MendLink componentId={id} code={code} />
        </p>
      ))}
      {life.kind === 'not-authorised' && (
        <p>Its part number is not authorised at the rating of the engine it is in.</p>
      )}
      <p className="quiet">
        {limitSource(life) ?? 'No document is recorded for the limit'}
        {life.ratingCode !== null && `, at rating ${life.ratingCode}`}
      </p>
      {life.kind === 'limited' && (
        <p>
          {life.projectedOn === null ? endText(life) : `Ends ${endText(life)}`}
          {life.projectedOn !== null && <span className="quiet"> {life.basis}</span>}
        </p>
      )}
      {life.flagged && (
        <p>
          <StatusMark status="not-verified" word="Worst case, accepted" /> {acceptedText(life)}
        </p>
      )}
      {lines.length > 0 && (
        <details>
          <summary>How we got this</summary>
          <ol className="how">
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
        </details>
      )}
    </section>
  );
}

/** Spans that no record covers, and whether someone accepted the worst case. */
export function Gaps({ component: { id: componentId, gaps } }: { readonly component: ComponentView }) {
  if (gaps.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="gaps">
      <h2 id="gaps" className="section-heading">
        Gaps in its records
      </h2>
      <ul className="plain-list gaps">
        {gaps.map(({ id, from, to, note, accepted }) => (
          <li key={id}>
            <StatusMark
              status={accepted ? 'closed' : 'not-verified'}
              word={accepted ? 'Accepted at its worst case' : 'Not accepted'}
            />
            <span>
              {/* An opening whose trace is not shown has no beginning. */}
              {from.startsWith('1970-01-01') ? 'Before' : `${momentText(from)} to`} {momentText(to)}
            </span>
            <span>{note}</span>
            {!accepted && <MendLink componentId={componentId} code="TRACE_GAP" />}
          </li>
        ))}
      </ul>
    </section>
  );
}
