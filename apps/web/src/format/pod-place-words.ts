import type { PodPlace } from '@strutbook/domain/work/step.js';

const PLACES: Readonly<Record<PodPlace, string>> = {
  cockpit: 'Cockpit',
  ground: 'On the ground, around the airframe',
  inlet: 'Inlet',
  'fan-cowls': 'Fan cowls',
  reverser: 'Reverser',
  'core-left': 'Core, left side',
  'core-right': 'Core, right side',
  gearbox: 'Gearbox, below the fan case',
  'forward-mount': 'Forward mount',
  'aft-mount': 'Aft mount',
  strut: 'Strut',
  exhaust: 'Exhaust',
  stand: 'On its stand',
};

/** Where on the powerplant a group of steps is; a place of a newer server stands as it came. */
export const podPlaceWords = (place: string): string =>
  (PLACES as Readonly<Record<string, string>>)[place] ?? place.replaceAll('-', ' ');

/** Whether the place is one that this client knows. */
export const isPodPlace = (place: string): place is PodPlace => Object.hasOwn(PLACES, place);
