import { StatusShape } from '../status/status-shape.js';
import { STATUS_LOOKS } from '../status/statuses.js';
import { AircraftOutline } from './aircraft-outline.js';
import { type Spot, spotsOf } from './mount-layout.js';
import { mountWords, type PlacedPosition } from './position.js';
import './position-diagram.css';

interface PositionDiagramProps {
  /** The airframe's registration. */
  readonly registration: string;
  readonly positions: readonly PlacedPosition[];
}

const NACELLE = 'M-27-46H27V6L17 26H-17L-27 6Z';
const APU_BOX = 'M-29-19H29V19H-29Z';

function words(position: PlacedPosition): string {
  const what = position.kind === 'apu' ? 'APU' : 'engine';
  const state =
    position.serial === null
      ? `no ${what} installed`
      : `${position.serial}, ${STATUS_LOOKS[position.status].word}`;
  return position.kind === 'apu'
    ? `${position.label}: ${state}.`
    : `${position.label}, ${mountWords(position.mount)}: ${state}.`;
}

/** The drawing said in one sentence for each position. */
export function diagramSummary(registration: string, positions: readonly PlacedPosition[]): string {
  return [`Aircraft ${registration} from above.`, ...positions.map(words)].join(' ');
}

/** Long serials are written smaller rather than cut: a cut serial is another serial. */
const serialSize = (serial: string): number => Math.min(18, 200 / (serial.length * 0.62));

function Nacelle({ spot }: { readonly spot: Spot }) {
  const { position, x, y, label, pylon } = spot;
  const empty = position.serial === null;
  const apu = position.kind === 'apu';
  const look = empty
    ? 'nacelle-empty'
    : `nacelle-${position.status} tone-${STATUS_LOOKS[position.status].tone}`;
  return (
    <g>
      {pylon !== null && (
        <path
          className="aircraft-skin"
          d={pylon === 'left' ? `M${x + 26} 318H472V330H${x + 26}Z` : `M${x - 26} 318H528V330H${x - 26}Z`}
        />
      )}
      <g className={`nacelle ${look}`} transform={`translate(${x} ${y})`}>
        <path className="nacelle-skin" d={apu ? APU_BOX : NACELLE} />
        {apu ? (
          <text className="nacelle-apu" x={empty ? 0 : -9} y="5" textAnchor="middle">
            APU
          </text>
        ) : (
          <text className="nacelle-number" y="-14" textAnchor="middle">
            {position.number}
          </text>
        )}
        {!empty &&
          (apu ? (
            <StatusShape status={position.status} size={13} x={11} y={-7} />
          ) : (
            <StatusShape status={position.status} size={18} x={-9} y={-5} />
          ))}
        {empty && !apu && <StatusShape status="not-applicable" size={18} x={-9} y={-5} />}
      </g>
      <text
        className={empty ? 'nacelle-label nacelle-label-empty' : 'nacelle-label'}
        x={label.x}
        y={label.y}
        textAnchor={label.anchor}
        fontSize={empty ? 16 : serialSize(position.serial)}
      >
        {position.serial ?? (apu ? 'No APU' : 'No engine')}
      </text>
    </g>
  );
}

/** The aircraft from above with what stands at each position. A picture: the cards are the controls. */
export function PositionDiagram({ registration, positions }: PositionDiagramProps) {
  return (
    <svg
      className="position-diagram"
      viewBox="40 0 920 452"
      role="img"
      aria-label={diagramSummary(registration, positions)}
    >
      <AircraftOutline />
      <text className="diagram-side" x="54" y="352">
        Left
      </text>
      <text className="diagram-side" x="946" y="352" textAnchor="end">
        Right
      </text>
      {spotsOf(positions).map((spot) => (
        <Nacelle key={`${spot.position.kind} ${spot.position.number}`} spot={spot} />
      ))}
    </svg>
  );
}
