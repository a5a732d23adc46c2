import type { HttpClient } from '../http-client.js';
import { instantAt } from './instants.js';
import { done } from './problem.js';

export interface RegisteredPosition {
  readonly id: string;
  readonly number: number;
  readonly slots: readonly { readonly id: string; readonly kind: 'engine' | 'pod' | 'apu' }[];
}

export interface RegisteredAirframe {
  readonly id: string;
  readonly registration: string;
  readonly positions: readonly RegisteredPosition[];
}

export interface RegisteredComponent {
  readonly id: string;
  readonly serialNumber: string;
  readonly version: number;
  readonly slots: readonly { readonly id: string; readonly name: string }[];
}

export interface RuleWeights {
  readonly perFlight?: number;
  readonly perLanding?: number;
  readonly perTouchAndGo?: number;
  readonly perStart?: number;
  readonly perAbortedTakeOff?: number;
  readonly denominator?: number;
}

export interface OpeningRow {
  readonly ratingCode: string | null;
  readonly minutes: number | null;
  readonly cycles: number | null;
}

export interface NewComponent {
  readonly kind: 'engine' | 'module' | 'part' | 'pod' | 'apu';
  readonly serialNumber: string;
  readonly partNumber?: string;
  readonly engineModelId?: string;
  readonly lifeLimited?: boolean;
  readonly podClock?: 'airframe' | 'position';
  readonly manufacturedOn?: string;
  readonly firstInstalledOn?: string;
  readonly slots?: readonly {
    readonly kind: 'module' | 'part';
    readonly name: string;
    readonly lifeLimited: boolean;
  }[];
}

/** Where something is put: into a slot, or to a location by its name. */
export type Target = { readonly slotId: string } | { readonly locationName: string };

const weights = {
  perFlight: 0,
  perLanding: 0,
  perTouchAndGo: 0,
  perStart: 0,
  perAbortedTakeOff: 0,
  denominator: 1,
};

/** Enters an operator's register over HTTP, as the records office does. Each throws when it is refused. */
export class Register {
  constructor(readonly client: HttpClient) {}

  async post<T>(path: string, body: object): Promise<T> {
    return done(await this.client.post<T>(path, body));
  }

  /** A type with so many engine positions, from the left outboard. */
  async airframeType(designation: string, engines: number): Promise<string> {
    const positions = Array.from({ length: engines }, (_, index) => ({
      number: index + 1,
      kind: 'engine',
      mount: index < engines / 2 ? 'left-wing' : 'right-wing',
      label: `Position ${index + 1}`,
    }));
    const { id } = await this.post<{ id: string }>('/api/airframe-types', {
      maker: 'Veldt Aircraft',
      designation,
      positions,
    });
    return id;
  }

  airframe(
    registration: string,
    airframeTypeId: string,
    more: { readonly dayZone?: string; readonly ruleSet?: string } = {},
  ): Promise<RegisteredAirframe> {
    const known = {
      registration,
      airframeTypeId,
      serialNumber: `MSN ${registration}`,
      ruleSet: 'eu-145',
      owner: 'Test operator',
    };
    return this.post('/api/airframes', { ...known, ...more });
  }

  async engineModel(
    designation: string,
    {
      ratings,
      rules,
      lifeMethod = 'pro-rata',
    }: {
      readonly ratings: readonly string[];
      readonly rules: readonly (RuleWeights & { readonly airframeTypeId?: string })[];
      readonly lifeMethod?: 'pro-rata' | 'lowest-limit';
    },
  ): Promise<string> {
    const { id } = await this.post<{ id: string }>('/api/engine-models', {
      kind: 'engine',
      maker: 'Karneth Turbines',
      designation,
      lifeMethod,
      lifeSource: `${designation} manual, chapter 05`,
      ratings: ratings.map((code) => ({ code })),
      cycleRules: rules.map((rule) => ({
        ...weights,
        ...rule,
        source: `${designation} manual`,
        revision: '1',
      })),
    });
    return id;
  }

  async lifeLimit(limit: {
    readonly partNumber: string;
    readonly engineModelId: string;
    readonly ratingCode: string | null;
    readonly cycles: number;
  }): Promise<string> {
    const { id } = await this.post<{ id: string }>('/api/life-limits', {
      ...limit,
      authorisation: 'limited',
      document: 'Manual, chapter 05',
      revision: '1',
      effectiveOn: '2020-01-01',
    });
    return id;
  }

  location(name: string, kind: 'store' | 'shop' | 'quarantine' = 'store'): Promise<{ readonly id: string }> {
    return this.post('/api/locations', { name, kind });
  }

  component(component: NewComponent): Promise<RegisteredComponent> {
    const known = {
      maker: 'Karneth Turbines',
      partNumber: `PN-${component.kind}`,
      description: `Test ${component.kind}`,
      owner: 'Test operator',
    };
    return this.post('/api/components', { ...known, ...component });
  }

  async opening(
    subject: { readonly componentId: string } | { readonly airframeId: string },
    rows: readonly OpeningRow[],
    at = 0,
  ): Promise<void> {
    await this.post('/api/openings', {
      ...subject,
      at: instantAt(at),
      basis: 'new',
      rows,
      source: 'Records before',
    });
  }

  async rating(componentId: string, ratingCode: string, at = 0): Promise<void> {
    await this.post('/api/rating-changes', {
      componentId,
      at: instantAt(at),
      ratingCode,
      source: 'Data plate',
    });
  }

  place(componentId: string, target: Target, at = 0): Promise<{ readonly id: string }> {
    return this.post('/api/placements', {
      componentId,
      ...target,
      boundary: { kind: 'instant', at: instantAt(at) },
    });
  }
}
