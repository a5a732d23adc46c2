import { slotWords } from '../../format/place-words.js';
import type { ComponentKind, Place } from '../../server/wire.js';

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
