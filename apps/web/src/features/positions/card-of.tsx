import { countersText } from '../../format/counters-text.js';
import { exactCycles } from '../../format/cycles.js';
import { dayText, sinceText } from '../../format/when.js';
import type { InstalledEngine, PositionView } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import type { CardPosition } from '../../ui/aircraft/position-card.js';
import { markOf } from '../../ui/status/near.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { positionLabel, soonestText, tightestAmount } from './position-words.js';

/** An APU has no rating unless one is recorded. */
function ratingText({ ratingCode }: InstalledEngine, kind: PositionView['kind']): string {
  if (ratingCode !== null) return `, rating ${ratingCode}`;
  return kind === 'apu' ? '' : ', rating not recorded';
}

interface EngineDetailsProps {
  readonly engine: InstalledEngine;
  readonly kind: PositionView['kind'];
}

function EngineDetails({ engine, kind }: EngineDetailsProps) {
  const soonest = soonestText(engine);
  return (
    <>
      <p>
        {engine.model ?? 'Model not recorded'}
        {ratingText(engine, kind)}
      </p>
      <p>
        Since installation {countersText(engine.sinceInstalled)}
        <br />
        <span className="quiet">Installed {sinceText(engine.installedAt, engine.precision)}</span>
      </p>
      {engine.tightest !== null && (
        <p>
          Tightest part{' '}
          <RouteLink href={`/components/${engine.tightest.componentId}`}>
            <SerialText>{engine.tightest.serialNumber}</SerialText>
          </RouteLink>
          {engine.tightest.reason !== null && <span className="quiet"> {engine.tightest.reason}</span>}
          {engine.tightest.flagged && <span className="quiet"> Worst case, accepted</span>}
        </p>
      )}
      {soonest !== null && engine.soonest !== null && (
        <p>
          {soonest},{' '}
          <RouteLink href={`/components/${engine.soonest.componentId}`}>
            <SerialText>{engine.soonest.serialNumber}</SerialText>
          </RouteLink>
        </p>
      )}
    </>
  );
}

interface DetailsProps {
  readonly position: PositionView;
  readonly startHref: string | null;
}

function Details({ position, startHref }: DetailsProps) {
  const { engine, pod, kind } = position;
  return (
    <>
      {engine !== null && <EngineDetails engine={engine} kind={kind} />}
      {pod !== null && (
        <p>
          Pod{' '}
          <RouteLink href={`/components/${pod.id}`}>
            <SerialText>{pod.serialNumber}</SerialText>
          </RouteLink>
        </p>
      )}
      {pod === null && kind === 'engine' && <p className="quiet">No pod recorded</p>}
      {startHref !== null && (
        <p className="no-print">
          <RouteLink href={startHref} className="card-act">
            {kind === 'apu' ? 'Start a change of the APU' : 'Start engine change'}
            <span className="visually-hidden"> at {positionLabel(position)}</span>
          </RouteLink>
        </p>
      )}
    </>
  );
}

/** An empty place for an APU has nothing more to tell, unless it can be filled. */
const hasDetails = ({ engine, pod, kind }: PositionView, startHref: string | null): boolean =>
  engine !== null || pod !== null || kind === 'engine' || startHref !== null;

interface CardOptions {
  /** The instant shown, carried on into the engine's page. */
  readonly at: string | undefined;
  /** Opens the act that fills an empty position; null for those who may not. */
  readonly fillHref: ((position: PositionView) => string) | null;
  /** Opens a package that changes what stands there; null for those who may not, and for the past. */
  readonly startHref: ((position: PositionView) => string) | null;
}

/** A position as the board shows it. */
export function cardOf(position: PositionView, { at, fillHref, startHref }: CardOptions): CardPosition {
  const { engine, number, kind, mount, emptySince } = position;
  const start = startHref?.(position) ?? null;
  const base = {
    number,
    kind,
    mount,
    label: positionLabel(position),
    details: hasDetails(position, start) ? <Details position={position} startHref={start} /> : undefined,
  };
  if (engine === null)
    return {
      ...base,
      serial: null,
      status: 'not-applicable',
      href: fillHref?.(position) ?? null,
      emptySince: emptySince === null ? null : dayText(emptySince),
    };
  const { tightest, sinceNew } = engine;
  return {
    ...base,
    serial: engine.serialNumber,
    status: markOf(engine.status),
    href: `/components/${engine.id}${at === undefined ? '' : `?at=${encodeURIComponent(at)}`}`,
    minutes: sinceNew.minutes,
    cycles: sinceNew.cycles === null ? null : exactCycles(sinceNew.cycles),
    tightest: tightest === null ? null : { amount: tightestAmount(tightest), part: tightest.description },
    note: tightest === null ? 'No life-limited part recorded in it' : null,
  };
}
