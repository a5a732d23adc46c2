import type { PodPlace } from '@strutbook/domain/work/step.js';

/** Each place in words. */
export const PLACE_WORDS: Readonly<Record<PodPlace, string>> = {
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

/** The words of a place; one of a newer server stands as it came. */
export const placeWords = (place: string): string =>
  PLACE_WORDS[place as PodPlace] ?? place.replaceAll('-', ' ');
