import { describe, expect, it } from '@jest/globals';
import type { ComponentView } from '../support/logbook/component-view.js';
import { fleetDesk } from '../support/logbook/fleet-desk.js';
import { done, problemOf } from '../support/scenario/problem.js';

interface Page<T> {
  readonly rows: readonly T[];
  readonly next: string | null;
}

const desk = fleetDesk();
const { refusalOf, fieldsOf } = desk;

describe('components', () => {
  it('tells one with its place, counters, life, limiter and all that is in it', async () => {
    const [engine] = desk.fleet.engines;

    const component = done(
      await desk.office.administrator.get<ComponentView>(`/api/components/${engine?.id}`),
    );

    expect(component).toMatchObject({
      ratingCode: 'A',
      verified: true,
      place: { kind: 'location', label: 'Store' },
      counters: {
        sinceNew: { minutes: 60_000, cycles: { units: 1_000, denominator: 1 } },
        sinceOverhaul: null,
        sinceInstalled: null,
      },
      life: null,
      slots: [
        {
          name: 'Fan',
          component: {
            serialNumber: 'ZZ-E1-M',
            slots: [{ name: 'Hub', component: { serialNumber: 'ZZ-E1-H' } }],
          },
        },
        {
          name: 'Disk',
          component: {
            serialNumber: 'ZZ-E1-D',
            life: { kind: 'limited', remainingCycles: 19_000, cycleLimit: 20_000 },
          },
        },
      ],
    });
  });

  it('says "not verified" of one without an opening: unknown is not zero', async () => {
    const { id } = await desk.register.component({
      kind: 'part',
      serialNumber: 'NO-PAPERS',
      engineModelId: desk.fleet.modelId,
      lifeLimited: true,
    });

    const component = done(await desk.office.administrator.get<ComponentView>(`/api/components/${id}`));

    expect(component).toMatchObject({
      verified: false,
      counters: { sinceNew: { minutes: null, cycles: null } },
      place: { kind: 'none' },
    });
    expect(component.life).toMatchObject({ kind: 'unsubstantiated', remainingCycles: null });
  });

  it('finds components by a piece of their serial or part number, page by page, each once', async () => {
    const found = async (query: string) =>
      done(await desk.office.administrator.get<Page<{ serialNumber: string }>>(`/api/components?${query}`));
    const all = (await found('search=zz-e&limit=200')).rows.map(({ serialNumber }) => serialNumber);
    expect(all).toHaveLength(20);

    const paged: string[] = [];
    for (let after: string | null = ''; after !== null; ) {
      const page: Page<{ serialNumber: string }> = await found(
        `search=zz-e&limit=7${after === '' ? '' : `&after=${after}`}`,
      );
      paged.push(...page.rows.map(({ serialNumber }) => serialNumber));
      after = page.next;
    }

    expect(paged).toEqual(all);
    expect((await found('kind=engine')).rows).toHaveLength(5);
    expect((await found('search=K-HUB')).rows).toHaveLength(5);
    expect((await found('search=_')).rows).toEqual([]);
    expect((await found('search=%25')).rows).toEqual([]);
  });

  it('refuses one that is registered already, an engine without a model, and a place of the list that is none', async () => {
    const engine = {
      kind: 'engine',
      maker: 'Karneth Turbines',
      partNumber: 'PN-engine',
      description: 'D',
      owner: 'O',
      serialNumber: 'ZZ-E1',
    };

    expect(
      await refusalOf('/api/components', { ...engine, engineModelId: desk.fleet.modelId }),
    ).toMatchObject({
      status: 409,
      code: 'ALREADY_EXISTS',
      fields: [{ field: 'serialNumber' }],
    });
    expect(await fieldsOf('/api/components', { ...engine, serialNumber: 'ZZ-E99' })).toEqual([
      'engineModelId',
    ]);
    expect(
      problemOf(await desk.office.administrator.get('/api/components?after=nowhere')).fields,
    ).toMatchObject([{ field: 'after' }]);
  });

  it('refuses text that cannot be told from other text', async () => {
    const part = { kind: 'part', maker: 'M', partNumber: 'P', description: 'D', owner: 'O' };

    for (const serialNumber of [' S1', 'S1 ', 'S\u0000', 'S\u200b1', '', '   '])
      expect(await fieldsOf('/api/components', { ...part, serialNumber })).toEqual(['serialNumber']);
  });

  it('lists every place a component was', async () => {
    const [hub] = desk.fleet.engines[0]?.partIds ?? [];

    const places = done(await desk.office.administrator.get<object[]>(`/api/components/${hub}/places`));

    expect(places).toMatchObject([
      { kind: 'slot', label: 'Hub in Test module ZZ-E1-M', to: null, fromPrecision: 'minute', voided: false },
    ]);
  });
});
