import type { TorqueCapture } from '@strutbook/domain/work/capture.js';
import { pointStanding } from '../captures/capture-entries.js';
import type { Step } from '../work/work-shapes.js';

interface BoltPictureProps {
  readonly step: Step;
  readonly capture: TorqueCapture;
  readonly point: string;
}

interface Placed {
  readonly point: string;
  readonly x: number;
  readonly y: number;
}

const RADIUS = 74;
const CENTRE = 110;
const MOST_IN_A_ROW = 3;

const byName = (a: string, b: string): number => a.localeCompare(b, 'en', { numeric: true });

/** Three and fewer stand in a row, more in a circle, the first on top. */
function placesOf(points: readonly string[]): Placed[] {
  const named = points.toSorted(byName);
  if (named.length <= MOST_IN_A_ROW)
    return named.map((point, place) => ({
      point,
      x: CENTRE + (place - (named.length - 1) / 2) * 72,
      y: 40,
    }));
  return named.map((point, place) => {
    const angle = (place / named.length) * 2 * Math.PI;
    return { point, x: CENTRE + RADIUS * Math.sin(angle), y: CENTRE - RADIUS * Math.cos(angle) };
  });
}

const HEXAGON = 'M19 0 9.5 16.5H-9.5L-19 0-9.5-16.5H9.5Z';

/** The bolts of the group, the line of their order, and which are done. The words beside it say the same. */
export function BoltPicture({ step, capture, point }: BoltPictureProps) {
  const placed = placesOf(capture.points);
  const at = (name: string) => placed.find((each) => each.point === name);
  const line = capture.points
    .flatMap((name) => {
      const place = at(name);
      return place === undefined ? [] : [`${place.x.toFixed(1)} ${place.y.toFixed(1)}`];
    })
    .join('L');
  const done = capture.points.filter((name) => pointStanding(step, capture, name) === 'accepted');
  const height = placed.length <= MOST_IN_A_ROW ? 80 : 220;
  return (
    <svg
      className="bolts"
      viewBox={`0 0 220 ${height}`}
      role="img"
      aria-label={`${capture.points.length} bolts in ${height === 80 ? 'a row' : 'a circle'}; order ${capture.points.join(', ')}; done: ${done.length === 0 ? 'none' : done.join(', ')}; now ${point}`}
    >
      {height > 80 && <circle className="bolt-ring" cx={CENTRE} cy={CENTRE} r={RADIUS} />}
      <path className="bolt-line" d={`M${line}`} />
      {placed.map(({ point: name, x, y }) => (
        <g
          key={name}
          className={`bolt bolt-${pointStanding(step, capture, name)}`}
          transform={`translate(${x} ${y})`}
        >
          {name === point && <circle className="bolt-now" r="27" />}
          <path d={HEXAGON} />
          <text y="6" textAnchor="middle">
            {name}
          </text>
        </g>
      ))}
    </svg>
  );
}
