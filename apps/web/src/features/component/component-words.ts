import { exactCycles } from '../../format/cycles.js';
import { hoursMinutes } from '../../format/hours.js';
import { slotWords } from '../../format/place-words.js';
import type { ComponentKind, Counters, Place } from '../../server/wire.js';

const KINDS: Readonly<Record<ComponentKind, string>> = {
  engine: 'Engine',
  module: 'Module',
  part: 'Part',
  pod: 'Pod',
  apu: 'APU',
};

/** 'Engine' */
export const kindWord = (kind: ComponentKind): string => KINDS[kind];

/** Where it is, in words. */
export function placeWords({ label, positionNumber, parentId }: Place): string {
  return positionNumber === null || parentId !== null ? label : slotWords(label);
}

/** The page that shows the place; null for a store, or nowhere. */
export function placeHref({ airframeId, parentId }: Place): string | null {
  if (parentId !== null) return `/components/${parentId}`;
  return airframeId === null ? null : `/positions/${airframeId}`;
}

/** '18,204:06 h, 7,981 cycles' */
export function countersText({ minutes, cycles }: Counters): string {
  const hours = minutes === null ? 'hours not known' : `${hoursMinutes(minutes)} h`;
  return `${hours}, ${cycles === null ? 'cycles not known' : `${exactCycles(cycles)} cycles`}`;
}
