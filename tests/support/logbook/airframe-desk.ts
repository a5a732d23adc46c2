import { beforeEach } from '@jest/globals';
import type { RegisteredAirframe } from '../scenario/register.js';
import { type FleetDesk, fleetDesk } from './fleet-desk.js';

/** An office with an airframe of its own for each test. */
export interface AirframeDesk extends Pick<FleetDesk, 'office' | 'register' | 'fleet'> {
  /** The airframe of the test that runs: 10 000:00 hours and 5 000 flights old, with nothing on it. */
  readonly airframe: RegisteredAirframe;
  /** The number of the test that runs, from 1: makes a serial number its own. */
  readonly marks: number;
}

/** Opens such an office for the tests of the calling file; registrations are ZZ-, the letter, the number. */
export function airframeDesk(letter: string): AirframeDesk {
  const desk = fleetDesk({ engines: 0, airframes: 1 });
  let airframe: RegisteredAirframe;
  let marks = 0;

  beforeEach(async () => {
    marks += 1;
    airframe = await desk.register.airframe(`ZZ-${letter}${marks}`, desk.fleet.typeId);
    await desk.register.opening({ airframeId: airframe.id }, [
      { ratingCode: null, minutes: 600_000, cycles: 5_000 },
    ]);
  });

  return {
    get office() {
      return desk.office;
    },
    get register() {
      return desk.register;
    },
    get fleet() {
      return desk.fleet;
    },
    get airframe() {
      return airframe;
    },
    get marks() {
      return marks;
    },
  };
}
