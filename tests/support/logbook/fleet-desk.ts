import { afterAll, beforeAll } from '@jest/globals';
import { type Fleet, makeFleet } from '../scenario/fleet.js';
import { type Office, openOffice } from '../scenario/office.js';
import { problemOf } from '../scenario/problem.js';
import { Register } from '../scenario/register.js';

/** An office with a fleet in its register. What it holds is there once the tests of the file have begun. */
export interface FleetDesk {
  readonly office: Office;
  readonly register: Register;
  readonly fleet: Fleet;
  /** The problem that sending this to the path is answered with. */
  readonly refusalOf: (path: string, body: object) => Promise<ReturnType<typeof problemOf>>;
  /** The fields that problem names. */
  readonly fieldsOf: (path: string, body: object) => Promise<string[] | undefined>;
}

/** Opens an office with such a fleet before the tests of the calling file, and closes it after them. */
export function fleetDesk(size: Parameters<typeof makeFleet>[1] = {}): FleetDesk {
  let office: Office;
  let register: Register;
  let fleet: Fleet;

  beforeAll(async () => {
    office = await openOffice();
    register = new Register(office.administrator);
    fleet = await makeFleet(register, size);
  }, 60_000);

  afterAll(() => office?.close(), 30_000);

  const refusalOf = async (path: string, body: object) =>
    problemOf(await office.administrator.post(path, body));
  return {
    get office() {
      return office;
    },
    get register() {
      return register;
    },
    get fleet() {
      return fleet;
    },
    refusalOf,
    fieldsOf: async (path, body) => (await refusalOf(path, body)).fields?.map(({ field }) => field),
  };
}
