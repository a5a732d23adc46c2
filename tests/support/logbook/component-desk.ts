import { done } from '../scenario/problem.js';
import { fleetDesk } from './fleet-desk.js';

interface Pair {
  readonly minutes: number | null;
  readonly cycles: { readonly units: number; readonly denominator: number } | null;
}

interface Component {
  readonly verified: boolean;
  readonly ratingCode: string | null;
  readonly counters: {
    readonly sinceNew: Pair;
    readonly sinceOverhaul: Pair | null;
    readonly sinceShopVisit: Pair | null;
  };
  readonly life: {
    readonly kind: string;
    readonly remainingCycles: number | null;
    readonly flagged: boolean;
    readonly reasons: { code: string }[];
  } | null;
}

/** A fact about a component, once recorded. */
export interface Recorded {
  readonly id: string;
}

/**
 * Opens an office with one engine and one airframe for the tests of the calling file, and gives what facts
 * about components are recorded and read with.
 */
export function componentDesk() {
  const desk = fleetDesk({ engines: 1, airframes: 1 });
  let made = 0;

  return {
    desk,
    refusalOf: desk.refusalOf,
    componentOf: async (id: string) =>
      done(await desk.office.administrator.get<Component>(`/api/components/${id}`)),
    /** Registers a component of which nothing else is known. Gives its id. */
    bare: async (kind: 'part' | 'engine' = 'part'): Promise<string> => {
      made += 1;
      const serialNumber = `B-${made}`;
      return (await desk.register.component({ kind, serialNumber, engineModelId: desk.fleet.modelId })).id;
    },
  };
}
