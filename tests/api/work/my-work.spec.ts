import { afterAll, beforeAll, expect, it } from '@jest/globals';
import type { HttpClient } from '../../support/http-client.js';
import { done } from '../../support/scenario/problem.js';
import { openShop, type Shop } from '../../support/work/shop.js';
import { signNow } from '../../support/work/sign-now.js';
import { capture, type ShownPackage, workOf } from '../../support/work/work-desk.js';

let shop: Shop;
let packageId: string;
let stepId: string;

beforeAll(async () => {
  shop = await openShop();
  const captures = [{ kind: 'text', key: 'seen', label: 'What was seen', required: true }];
  const steps = [{ title: 'Look at the harness.', inspection: 'independent', captures }];
  const asked = { kind: 'inspection', title: 'Harness', airframeId: shop.fleet.airframe.id, steps };
  packageId = done(await shop.planner.post<ShownPackage>('/api/packages', asked)).id;
  stepId = (await workOf(shop.planner, packageId)).steps[0]?.id ?? '';
}, 120_000);

afterAll(() => shop?.close(), 30_000);

interface Mine {
  readonly packages: readonly { readonly id: string; readonly steps: readonly { readonly why: string }[] }[];
}

const waiting = async (client: HttpClient) =>
  done(await client.get<Mine>('/api/my-work')).packages.flatMap(({ steps }) => steps.map(({ why }) => why));

const enter = async (text: string) =>
  done(await capture(shop.technician, stepId, { capture: 'seen', typed: { kind: 'text', text } }));

const sign = (client: HttpClient, meaning: 'done' | 'inspection') =>
  signNow(client, stepId, { meaning, secret: shop.office.founded.password });

const counts = async () => done(await shop.planner.get<ShownPackage>(`/api/packages/${packageId}`)).steps;

it('follows a step from hand to hand', async () => {
  expect(await waiting(shop.technician)).toEqual(['to-do']);

  await enter('Chafed at the clamp');
  await sign(shop.technician, 'done');
  expect([await waiting(shop.technician), await waiting(shop.inspector)]).toEqual([[], ['to-inspect']]);
  expect(await counts()).toEqual({ signed: 0, total: 1 });

  await sign(shop.inspector, 'inspection');
  expect([await waiting(shop.technician), await waiting(shop.inspector)]).toEqual([[], []]);
  expect(await counts()).toEqual({ signed: 1, total: 1 });
}, 30_000);

it('has the step again when something is entered after both signed: they stay in sight and no longer count', async () => {
  const changed = await enter('Chafed at two clamps');
  expect(changed.standing).toBe('changed');
  expect(changed.signatures.map(({ personName, counts: holds }) => [personName, holds])).toEqual([
    ['Tom Technician', false],
    ['Ines Inspector', false],
  ]);
  expect(await waiting(shop.technician)).toEqual(['to-do']);
  expect(await counts()).toEqual({ signed: 0, total: 1 });
}, 30_000);

it('counts both again when that entry is struck out: the content is the one they signed', async () => {
  const entry = (await workOf(shop.planner, packageId)).steps[0]?.entries.at(-1);
  const reason = { reason: 'Of another harness' };
  done(await shop.technician.post(`/api/step-entries/${entry?.id ?? ''}/void`, reason));
  expect(await waiting(shop.technician)).toEqual([]);
  expect(await counts()).toEqual({ signed: 1, total: 1 });
}, 30_000);

it('is nothing for a planner, who signs no steps', async () => {
  expect(await waiting(shop.planner)).toEqual([]);
});
