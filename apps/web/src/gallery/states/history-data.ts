import type { components } from '@strutbook/api-client/schema.gen.js';

type Line = components['schemas']['HistoryLineDto'];

const work = (stepId: string | null): Line['work'] => ({ packageId: 'k-240', number: 'EC-0240', stepId });

const done = (more: Partial<Line>): Line => ({
  at: '2026-11-20T21:40Z',
  placed: null,
  title: 'Step signed',
  detail: '',
  struck: null,
  adds: null,
  totals: { minutes: 1_092_246, cycles: 7981 },
  work: work(null),
  entry: { number: 1612, recordedAt: '2026-11-20T21:44Z', by: 'A. Tarn', hash: '19d7c0a3be5510f2' },
  ...more,
});

/** What a package worked by steps leaves in a history. */
export const WORK_LINES: readonly Line[] = [
  done({
    at: '2026-11-19T06:00Z',
    title: 'Package opened',
    detail: 'Package EC-0240: Engine change, position 3 of ZZ-417; procedure V840-71-CHANGE, revision 3',
  }),
  done({
    title: 'Attempt not accepted',
    detail:
      'Package EC-0240, step 27: Torque the forward mount bolts in order.; Forward mount bolt 2: 118.4 N·m with TW-014, rejected; above the range by 3.4 N·m',
    work: work('s-27'),
  }),
  done({
    detail:
      'Package EC-0240, step 27: Torque the forward mount bolts in order.; Forward mount bolt 1: 112.5 N·m with TW-014, accepted; Forward mount bolt 2: 110.0 N·m with TW-014, accepted; signed by A. Tarn, licence ZQ.66.0318',
    work: work('s-27'),
    struck: {
      recordedAt: '2026-11-20T22:10Z',
      by: 'A. Tarn',
      reason: 'Signature undone: bolt 2 was marked on the wrong side',
    },
  }),
  done({
    title: 'Step inspected',
    detail: 'Package EC-0240, step 12: Cap the lines and count the blanks.; inspected by I. Fenwarth',
    work: work('s-12'),
  }),
  done({
    title: 'Order amended',
    detail:
      'Package EC-0240, engine at position 3: KT-377 off, KT-655 on; the other spare has a gap; confirmed by I. Fenwarth',
  }),
  done({
    at: '2026-11-21T02:10Z',
    title: 'Released to service',
    detail: 'Release RN-0232 of package EC-0240, signed by Wen Tolvarsen, certificate ZQ.66.0001',
  }),
];
