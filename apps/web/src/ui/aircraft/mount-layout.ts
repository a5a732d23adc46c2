import type { Mount, PlacedPosition } from './position.js';

/** Where a nacelle stands in the drawing, and where its serial is written. */
export interface Spot<P extends PlacedPosition = PlacedPosition> {
  readonly position: P;
  readonly x: number;
  readonly y: number;
  readonly label: { readonly x: number; readonly y: number; readonly anchor: 'middle' | 'start' };
  /** Stands off the fuselage on a pylon: its side, or null. */
  readonly pylon: 'left' | 'right' | null;
}

export const CENTRE = 500;
/** The wing's leading edge: 30 units from the centre line it starts at y 150 and sweeps back. */
const leadingEdge = (offset: number): number => 150 + (offset - 30) * 0.348;

const WING_OFFSETS: Readonly<Record<number, readonly number[]>> = {
  1: [195],
  2: [150, 292],
  3: [110, 225, 335],
};

const byNumber = (a: PlacedPosition, b: PlacedPosition): number => a.number - b.number;

function wingSpots<P extends PlacedPosition>(mounted: readonly P[], mount: Mount): Spot<P>[] {
  // Positions are numbered from the left wing's tip to the right wing's tip.
  const fromCentre = [...mounted].sort(byNumber);
  if (mount === 'left-wing') fromCentre.reverse();
  const offsets =
    WING_OFFSETS[fromCentre.length] ?? fromCentre.map((_, place) => 100 + (place * 260) / fromCentre.length);
  return fromCentre.map((position, place) => {
    const offset = offsets[place] ?? 195;
    const x = mount === 'left-wing' ? CENTRE - offset : CENTRE + offset;
    const y = leadingEdge(offset) - 4;
    return { position, x, y, label: { x, y: y - 58, anchor: 'middle' }, pylon: null };
  });
}

function podSpot<P extends PlacedPosition>(position: P, side: 'left' | 'right'): Spot<P> {
  const x = side === 'left' ? CENTRE - 76 : CENTRE + 76;
  return {
    position,
    x,
    y: 322,
    label: { x: side === 'left' ? x - 14 : x + 14, y: 368, anchor: 'middle' },
    pylon: side,
  };
}

function tailSpots<P extends PlacedPosition>(mounted: readonly P[]): Spot<P>[] {
  const [first, second, third] = [...mounted].sort(byNumber);
  const inFin = (position: P): Spot<P> => ({
    position,
    x: CENTRE,
    y: 408,
    label: { x: CENTRE + 36, y: 446, anchor: 'start' },
    pylon: null,
  });
  if (first === undefined) return [];
  if (second === undefined) return [inFin(first)];
  if (third === undefined) return [podSpot(first, 'left'), podSpot(second, 'right')];
  return [podSpot(first, 'left'), inFin(second), podSpot(third, 'right')];
}

function apuSpots<P extends PlacedPosition>(apus: readonly P[], tailTaken: boolean): Spot<P>[] {
  // With an engine in the tail the APU stands further forward in the fuselage.
  const y = tailTaken ? 304 : 424;
  return apus.map((position, place) => {
    const here = y - place * 44;
    return {
      position,
      x: CENTRE,
      y: here,
      label: { x: CENTRE + 40, y: here + (tailTaken ? 6 : 18), anchor: 'start' },
      pylon: null,
    };
  });
}

/** A spot for each position, whatever their number. Total. */
export function spotsOf<P extends PlacedPosition>(positions: readonly P[]): Spot<P>[] {
  const engines = positions.filter((position) => position.kind === 'engine');
  const on = (mount: Mount): P[] => engines.filter((position) => position.mount === mount);
  const tail = tailSpots(on('tail'));
  const tailTaken = tail.some((spot) => spot.x === CENTRE);
  const apus = positions.filter((position) => position.kind === 'apu');
  return [
    ...wingSpots(on('left-wing'), 'left-wing'),
    ...wingSpots(on('right-wing'), 'right-wing'),
    ...tail,
    ...apuSpots(apus, tailTaken),
  ];
}
