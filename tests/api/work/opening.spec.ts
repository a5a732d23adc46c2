import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Answer, HttpClient } from '../../support/http-client.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { recordRequirement } from '../../support/scenario/requirements.js';
import { engineChange, openShop, type Shop } from '../../support/work/shop.js';
import { signNow } from '../../support/work/sign-now.js';
import { smallInspection } from '../../support/work/small-procedure.js';
import { capture, recordProcedure, type ShownPackage, stepOf, workOf } from '../../support/work/work-desk.js';

let shop: Shop;
let airframeId: string;
let inspectionId: string;

beforeAll(async () => {
  shop = await openShop();
  airframeId = shop.fleet.airframe.id;
  inspectionId = await recordProcedure(shop.planner, {
    code: 'K1-71-IN',
    kind: 'inspection',
    content: smallInspection(),
  });
}, 120_000);

afterAll(() => shop?.close(), 30_000);

const open = (body: object, client: HttpClient = shop.planner): Promise<Answer<ShownPackage>> =>
  client.post<ShownPackage>('/api/packages', body);

const own = { title: 'Look at the harness.', inspection: 'none' };

describe('a package that is opened', () => {
  it('is an engine change with the steps of its procedure and its order as the register has it', async () => {
    const made = await engineChange(shop);
    expect(made).toMatchObject({
      kind: 'engine-change',
      status: 'open',
      ruleSet: 'eu-145',
      reference: 'WO-4711',
      place: 'Position 1',
      steps: { signed: 0, total: 8 },
      procedure: { code: 'K1-71-EC', revision: '1' },
      order: {
        slot: 'engine',
        positionNumber: 1,
        outgoing: { serialNumber: 'ZZ-E1', place: 'ZZ-101, Position 1' },
        incoming: { serialNumber: 'ZZ-E3', place: 'Store' },
        removedToLocation: 'Store',
      },
    });
    expect(made.number).toMatch(/^EC-\d{4,}$/);
    const work = await workOf(shop.technician, made.id);
    expect(
      work.steps.map(({ definition, standing }) => [definition.number, definition.key, standing]),
    ).toEqual([
      [1, 'make-safe', 'open'],
      [2, 'open-cowl', 'blocked'],
      [3, 'part-fuel', 'blocked'],
      [4, 'remove', 'blocked'],
      [5, 'install', 'blocked'],
      [6, 'rejoin-fuel', 'blocked'],
      [7, 'leak-check', 'blocked'],
      [8, 'close-cowl', 'blocked'],
    ]);
    expect(work.counts).toEqual([
      { what: 'tags', out: null, in: null },
      { what: 'blanks', out: null, in: null },
    ]);
  });

  it('is a pod swap without a procedure: its order makes the steps', async () => {
    const made = done(
      await open({
        kind: 'pod-swap',
        title: 'Pod at position 1',
        airframeId,
        order: {
          positionNumber: 1,
          slot: 'pod',
          incomingSerial: 'ZZ-N-airframe',
          reason: 'Planned',
        },
      }),
    );
    expect(made.number).toMatch(/^PS-/);
    const { steps } = await workOf(shop.planner, made.id);
    expect(steps.map(({ definition: { title, moves, inspection } }) => [title, moves, inspection])).toEqual([
      ['Install serial ZZ-N-airframe.', 'installation', 'independent'],
    ]);
  });

  it('is an inspection of an airframe with added steps after those of its procedure', async () => {
    const made = done(
      await open({
        kind: 'inspection',
        title: 'Cowl inspection',
        airframeId,
        procedureId: inspectionId,
        steps: [own],
      }),
    );
    expect(made.number).toMatch(/^IN-/);
    expect(made.order).toBeNull();
    const work = await workOf(shop.planner, made.id);
    expect(work.groups.map(({ letter }) => letter)).toEqual(['A', 'B', 'C', 'D', 'E', 'F']);
    expect(work.steps.at(-1)?.definition).toMatchObject({ number: 4, title: 'Look at the harness.' });
  });

  it('is a change of a part inside a component, at a place beneath it', async () => {
    const [, , third] = shop.fleet.engines;
    const partId = third?.partIds[1];
    const part = done(await shop.planner.get<{ serialNumber: string }>(`/api/components/${partId ?? ''}`));
    const made = done(
      await open({
        kind: 'component-change',
        title: 'Disk off',
        componentId: third?.id,
        ruleSet: 'uk-145',
        order: {
          slotId: third?.slotIds.disk,
          outgoingSerial: part.serialNumber,
          removedToLocation: 'Store',
          reason: 'Life',
        },
      }),
    );
    expect(made).toMatchObject({ ruleSet: 'uk-145', place: 'Disk', order: { positionNumber: null } });
    expect(made.number).toMatch(/^CC-/);
  });

  it('is a directive on a component that hangs on an airframe, under the rule set of that airframe', async () => {
    const [first] = shop.fleet.engines;
    const made = done(
      await open({ kind: 'directive', title: 'Look at the hub', componentId: first?.id, steps: [own] }),
    );
    expect(made.number).toMatch(/^AD-/);
    expect(made.ruleSet).toBe('eu-145');
  });

  it('names the requirements its work is to meet, held against what it is on unless told', async () => {
    const { id: requirementId } = done(
      await recordRequirement(shop.office.administrator, 'R-71', {
        anchor: 'airframe',
        airframeTypeId: shop.fleet.typeId,
      }),
    );
    const made = done(
      await open({
        kind: 'inspection',
        title: 'R',
        airframeId,
        steps: [own],
        requirements: [{ requirementId }],
      }),
    );
    expect(made.requirements).toMatchObject([{ requirementId, code: 'R-71', airframeId }]);
    const [, , third] = shop.fleet.engines;
    const requirements = [{ requirementId, componentId: third?.id }];
    const other = await open({ kind: 'inspection', title: 'R', airframeId, steps: [own], requirements });
    expect(problemOf(other).fields?.[0]?.field).toBe('requirements[0].requirementId');
  });

  it('meets requirements of what it works on alone: what hangs there, and what its order moves', async () => {
    const { id: requirementId } = done(await recordRequirement(shop.office.administrator, 'R-72'));
    const [first, , , fourth] = shop.fleet.engines;
    const look = (componentId: string | undefined) =>
      open({
        ...{ kind: 'inspection', title: 'R', airframeId, steps: [own] },
        requirements: [{ requirementId, componentId }],
      });
    expect(done(await look(first?.id)).requirements).toMatchObject([{ componentId: first?.id }]);
    // The fourth stands in the store: what is done on this airframe meets nothing there.
    expect(problemOf(await look(fourth?.id))).toMatchObject({
      code: 'REFUSED_BY_FACTS',
      fields: [{ field: 'requirements[0].requirementId' }],
    });
    const order = { positionNumber: 2, slot: 'engine', outgoingSerial: 'ZZ-E2', incomingSerial: 'ZZ-E4' };
    const change = await open({
      ...{ kind: 'engine-change', title: 'R', airframeId, procedureId: shop.procedureId },
      order: { ...order, removedToLocation: 'Store', reason: 'Planned' },
      requirements: [{ requirementId, componentId: fourth?.id }],
    });
    expect(done(change).requirements).toMatchObject([{ componentId: fourth?.id }]);
  });

  it('has a step added to it while it is open', async () => {
    const made = await engineChange(shop, { positionNumber: 2, incoming: 'ZZ-E4' });
    const step = done(
      await shop.planner.post<{ definition: { number: number; key: string } }>(
        `/api/packages/${made.id}/steps`,
        { ...own, captures: [{ kind: 'text', key: 'seen', label: 'What was seen', required: true }] },
      ),
    );
    expect(step.definition.number).toBe(9);
    const again = done(await shop.planner.get<ShownPackage>(`/api/packages/${made.id}`));
    expect([again.steps.total, again.version]).toEqual([9, 2]);
  });

  it('is found by what it is on, its kind and how it stands', async () => {
    const find = async (query: string) =>
      done(await shop.technician.get<{ rows: ShownPackage[] }>(`/api/packages?${query}`)).rows;
    const kinds = (rows: readonly ShownPackage[]) => [...new Set(rows.map(({ kind }) => kind))];
    expect(kinds(await find('kind=pod-swap'))).toEqual(['pod-swap']);
    const [first] = shop.fleet.engines;
    expect(kinds(await find(`componentId=${first?.id ?? ''}`))).toEqual(['directive']);
    expect(kinds(await find(`airframeId=${airframeId}&kind=inspection&status=open`))).toEqual(['inspection']);
    // Changes logged as one act have no steps.
    expect((await find('kind=engine-change')).map(({ steps }) => steps.total)).toEqual(
      expect.arrayContaining([0, 8]),
    );
  });
});

describe('a package that is withdrawn', () => {
  it('keeps its reason, and takes nothing more', async () => {
    const made = await engineChange(shop, { incoming: 'ZZ-E5' });
    const { steps } = await workOf(shop.planner, made.id);
    const gone = done(
      await shop.planner.post<ShownPackage>(`/api/packages/${made.id}/withdraw`, { reason: 'Not needed' }),
    );
    expect([gone.status, gone.version]).toEqual(['withdrawn', 2]);
    expect(gone.withdrawal).toMatchObject({ person: 'Pia Planner', reason: 'Not needed' });
    const typed = { kind: 'count', number: '4' };
    const late = await shop.technician.post(`/api/steps/${steps[0]?.id ?? ''}/entries`, {
      capture: 'tags-out',
      typed,
    });
    expect(problemOf(late)).toMatchObject({ status: 409, code: 'WRONG_STATE' });
    const again = await shop.planner.post(`/api/packages/${made.id}/withdraw`, { reason: 'Twice' });
    expect(problemOf(again).code).toBe('WRONG_STATE');
    const step = await shop.planner.post(`/api/packages/${made.id}/steps`, own);
    expect(problemOf(step).code).toBe('WRONG_STATE');
    expect(stepOf(await workOf(shop.planner, made.id), 'make-safe').entries).toEqual([]);
  });

  it('is not one in which a cowl stands open', async () => {
    const secret = shop.office.founded.password;
    const made = done(
      await open({ kind: 'inspection', title: 'Cowls', airframeId, procedureId: inspectionId }),
    );
    const { steps } = await workOf(shop.planner, made.id);
    const [safe, cowl, close] = steps.map(({ id }) => id);
    const typed = { kind: 'count', number: '2' };
    done(await capture(shop.technician, safe ?? '', { capture: 'tags-out', typed }));
    await signNow(shop.technician, safe ?? '', { secret });
    await signNow(shop.technician, cowl ?? '', { secret });
    expect((await workOf(shop.planner, made.id)).openItems.map(({ item }) => item.key)).toEqual(['fan-cowl']);

    const withdraw = () => shop.planner.post(`/api/packages/${made.id}/withdraw`, { reason: 'No' });
    expect(problemOf(await withdraw()).detail).toContain('not closed: Fan cowl, left');

    done(await capture(shop.technician, close ?? '', { capture: 'tags-in', typed }));
    await signNow(shop.technician, close ?? '', { secret });
    expect((await withdraw()).status).toBe(200);
  });

  it('is not one in which something was moved', async () => {
    const [logged] = shop.fleet.packages;
    const answer = await shop.planner.post(`/api/packages/${logged?.id ?? ''}/withdraw`, { reason: 'No' });
    expect(problemOf(answer)).toMatchObject({ status: 422, code: 'REFUSED_BY_FACTS' });
  });
});
