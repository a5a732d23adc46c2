import { counted } from '../../format/counts.js';
import { hoursMinutes } from '../../format/hours.js';
import { dayText, momentText } from '../../format/when.js';
import type { BoardAirframe, PositionView, Tightest } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { markOf } from '../../ui/status/near.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import { inReadingOrder, positionLabel, tightestAmount } from './position-words.js';

/** What limits it, or why that is not known. */
function Limit({ tightest }: { readonly tightest: Tightest | null }) {
  if (tightest === null) return <span className="quiet">No life-limited part recorded</span>;
  const { description, reason } = tightest;
  if (reason !== null)
    return (
      <span>
        {reason}, {description}
      </span>
    );
  return (
    <span>
      <strong>{tightestAmount(tightest)}</strong>, {description}
    </span>
  );
}

function Cell({ position }: { readonly position: PositionView }) {
  const { kind, number, engine, emptySince } = position;
  return (
    <li className={engine === null ? 'board-cell board-cell-empty' : 'board-cell'}>
      <span className={kind === 'apu' ? 'board-number board-number-apu' : 'board-number'}>
        <span className="visually-hidden">{positionLabel(position)}</span>
        <span aria-hidden="true">{kind === 'apu' ? 'APU' : number}</span>
      </span>
      {engine === null ? (
        <span className="quiet">
          {kind === 'apu' ? 'No APU installed' : 'No engine installed'}
          {emptySince !== null && ` since ${dayText(emptySince)}`}
        </span>
      ) : (
        <span className="board-engine">
          <RouteLink href={`/components/${engine.id}`}>
            <SerialText>{engine.serialNumber}</SerialText>
          </RouteLink>
          <StatusMark status={markOf(engine.status)} />
          <Limit tightest={engine.tightest} />
        </span>
      )}
    </li>
  );
}

/** One airframe of the board: its totals and its positions side by side. */
export function AirframeRow({ row: { airframe, positions } }: { readonly row: BoardAirframe }) {
  const { id, registration, type, minutes, flights, lastFlightAt } = airframe;
  return (
    <li className="board-row" aria-labelledby={`board-${id}`}>
      <div className="board-airframe">
        <h2 id={`board-${id}`}>
          <RouteLink href={`/positions/${id}`}>
            <SerialText>{registration}</SerialText>
          </RouteLink>
        </h2>
        <p className="quiet">{type}</p>
        <p>
          {minutes === null ? 'Hours not known' : `${hoursMinutes(minutes)} h`},{' '}
          {flights === null ? 'flights not known' : counted(flights, 'flight')}
        </p>
        <p className="quiet">
          {lastFlightAt === null ? 'No flight logged' : `Last flight ${momentText(lastFlightAt)}`}
        </p>
      </div>
      <ul className="plain-list board-cells">
        {inReadingOrder(positions).map((position) => (
          <Cell key={position.positionId} position={position} />
        ))}
      </ul>
    </li>
  );
}
