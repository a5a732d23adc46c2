import type { Answer, HttpClient } from '../http-client.js';
import { instantAt } from '../scenario/instants.js';
import { done } from '../scenario/problem.js';
import { Register, type RegisteredAirframe, type RegisteredComponent } from '../scenario/register.js';

/** What a counter shows. */
export interface Figures {
  readonly minutes: number;
  readonly starts: number;
}

export interface ReadingsAnswer {
  readonly readings: readonly {
    readonly id: string;
    readonly at: string;
    readonly kind: string;
    readonly minutes: number;
    readonly starts: number;
    readonly ran: Figures | null;
    readonly first: Figures | null;
    readonly voided: boolean;
    readonly voidReason: string | null;
  }[];
  readonly counted: Figures;
  readonly readAt: string | null;
  readonly consequences?: {
    readonly newlyOver: readonly { readonly serialNumber: string; readonly remaining: number }[];
  };
}

export interface CountersAnswer {
  readonly verified: boolean;
  readonly counters: {
    readonly sinceNew: {
      readonly minutes: number | null;
      readonly cycles: { readonly units: number } | null;
    };
    readonly sinceInstalled: {
      readonly minutes: number | null;
      readonly cycles: { readonly units: number } | null;
    } | null;
  };
}

/** An airframe with a place for an auxiliary power unit, two units with opening balances, and a wheel in the first. */
export interface UnitFleet {
  readonly register: Register;
  readonly airframe: RegisteredAirframe;
  readonly apuSlotId: string;
  readonly apuModelId: string;
  readonly units: readonly [RegisteredComponent, RegisteredComponent];
  readonly wheel: RegisteredComponent;
}

const RULE = {
  perFlight: 0,
  perLanding: 0,
  perTouchAndGo: 0,
  perStart: 1,
  perAbortedTakeOff: 0,
  denominator: 1,
};

/** Enters it all; the units are 1,000 h and 2,000 starts old at minute 0, the wheel 500 h and 800 starts. */
export async function unitFleet(client: HttpClient, mark: string): Promise<UnitFleet> {
  const register = new Register(client);
  const { id: typeId } = await register.post<{ id: string }>('/api/airframe-types', {
    maker: 'Veldt Aircraft',
    designation: `${mark} with unit`,
    positions: [
      { number: 0, kind: 'apu', mount: 'tail', label: 'APU' },
      { number: 1, kind: 'engine', mount: 'left-wing', label: 'Position 1' },
      { number: 2, kind: 'engine', mount: 'right-wing', label: 'Position 2' },
    ],
  });
  const airframe = await register.airframe(`${mark}-APU`, typeId);
  const { id: apuModelId } = await register.post<{ id: string }>('/api/engine-models', {
    ...{ kind: 'apu', maker: 'Pelvarn Auxiliary Power', designation: `${mark} P20` },
    ...{ lifeMethod: 'pro-rata', lifeSource: 'P20 manual', ratings: [] },
    cycleRules: [{ ...RULE, source: 'P20 manual', revision: '1' }],
  });
  const unit = async (serialNumber: string) => {
    const made = await register.component({
      ...{ kind: 'apu', serialNumber, engineModelId: apuModelId },
      slots: [{ kind: 'part', name: 'Wheel', lifeLimited: true }],
    });
    await register.opening({ componentId: made.id }, [{ ratingCode: null, minutes: 60_000, cycles: 2_000 }]);
    return made;
  };
  const units = [await unit(`${mark}-U1`), await unit(`${mark}-U2`)] as const;
  const wheel = await register.component({
    ...{ kind: 'part', serialNumber: `${mark}-W1`, partNumber: `${mark}-WHEEL`, lifeLimited: true },
    engineModelId: apuModelId,
  });
  await register.opening({ componentId: wheel.id }, [{ ratingCode: null, minutes: 30_000, cycles: 800 }]);
  await register.place(wheel.id, { slotId: units[0].slots[0]?.id ?? '' });
  for (const { id } of units) await register.place(id, { locationName: 'Store' });
  const apuSlotId = airframe.positions.find(({ number }) => number === 0)?.slots[0]?.id ?? '';
  return { register, airframe, apuSlotId, apuModelId, units, wheel };
}

/** Acts and questions of the people who keep the counters. */
export class CounterDesk {
  constructor(readonly client: HttpClient) {}

  read(componentId: string, minute: number, figures: Figures): Promise<Answer<ReadingsAnswer>> {
    const body = { ...figures, at: instantAt(minute), source: 'Sheet' };
    return this.client.post(`/api/components/${componentId}/counter-readings`, body);
  }

  replace(
    componentId: string,
    minute: number,
    { last, first }: { readonly last: Figures; readonly first: Figures },
  ): Promise<Answer<ReadingsAnswer>> {
    const body = { last, first, at: instantAt(minute), source: 'Sheet' };
    return this.client.post(`/api/components/${componentId}/counter-replacements`, body);
  }

  correct(readingId: string, figures: Figures): Promise<Answer<ReadingsAnswer>> {
    const body = { ...figures, reason: 'Read wrongly' };
    return this.client.post(`/api/counter-readings/${readingId}/correct`, body);
  }

  void(readingId: string): Promise<Answer<ReadingsAnswer>> {
    return this.client.post(`/api/counter-readings/${readingId}/void`, { reason: 'Twice' });
  }

  async list(componentId: string): Promise<ReadingsAnswer> {
    return done(await this.client.get<ReadingsAnswer>(`/api/components/${componentId}/counter-readings`));
  }

  async counters(componentId: string, minute?: number): Promise<CountersAnswer> {
    const query = minute === undefined ? '' : `?at=${instantAt(minute)}`;
    return done(await this.client.get<CountersAnswer>(`/api/components/${componentId}${query}`));
  }

  /** Minutes and cycles since new, now or at a minute. */
  async sinceNew(componentId: string, minute?: number): Promise<readonly (number | null)[]> {
    const { sinceNew } = (await this.counters(componentId, minute)).counters;
    return [sinceNew.minutes, sinceNew.cycles?.units ?? null];
  }

  /** A change at the unit's place, previewed and confirmed, or the refusal of either. */
  async change(
    airframeId: string,
    minute: number,
    change: {
      readonly off?: { readonly serial: string; readonly reading?: Figures };
      readonly on?: { readonly serial: string; readonly reading?: Figures };
    },
  ): Promise<Answer<{ readonly id: string }>> {
    const body = {
      ...{ airframeId, positionNumber: 0, slot: 'apu', reason: 'Test', removedToLocation: 'Store' },
      outgoingSerial: change.off?.serial ?? null,
      incomingSerial: change.on?.serial ?? null,
      boundary: { kind: 'instant', at: instantAt(minute) },
      ...(change.off?.reading === undefined ? {} : { outgoingReading: change.off.reading }),
      ...(change.on?.reading === undefined ? {} : { incomingReading: change.on.reading }),
    };
    const preview = await this.client.post<{ readonly digest: string }>('/api/changes/preview', body);
    if (preview.status >= 300) return preview as unknown as Answer<{ readonly id: string }>;
    return this.client.post('/api/changes', { ...body, confirmDigest: preview.body.digest });
  }
}
