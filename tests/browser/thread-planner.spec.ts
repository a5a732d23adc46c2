import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type InService, putInService } from '../support/scenario/in-service.js';
import { hire } from '../support/scenario/office.js';
import { done } from '../support/scenario/problem.js';
import { recordRequirement } from '../support/scenario/requirements.js';
import type { Desk } from '../support/thread/desk.js';
import { deskIn, type House, openHouse } from '../support/thread/house.js';
import { watched } from '../support/thread/watched.js';

let house: House;
let planner: Desk;
let fleet: InService;
let over: string;

beforeAll(async () => {
  house = await openHouse();
  fleet = await putInService(house.administrator, { days: 0 });
  // Engines have 1,000 cycles: three left of one, over by far of the other.
  done(await recordRequirement(house.administrator, 'R-3', { repeat: { cycles: 1003 } }));
  over = done(
    await recordRequirement(house.administrator, 'R-OVER', { repeat: { cycles: 900 }, kind: 'check' }),
  ).id;
  const person = { signInName: 'pia', fullName: 'Pia Lund', roles: ['planner'] };
  planner = await deskIn(house);
  await planner.enter(await hire(house, person, { authorised: false }));
}, 180_000);

afterAll(() => house?.close(), 30_000);

const day = (fromToday: number): string =>
  new Date(Date.now() + fromToday * 86_400_000).toISOString().slice(0, 10);

const said = (words: string | RegExp) => planner.page.getByText(words).first().waitFor();

describe('the planner', () => {
  it(
    'is told what a filter leaves out, and sees it with one press',
    watched(async () => {
      await planner.go('/due');
      await said(/^Dates are projected by what each airframe flew in the last 90 days/);
      await planner.page.getByLabel('Status').selectOption('later');
      await said(/Left out by the filters: \d+ over limit/);
      await planner.button('Show them').click();
      await planner.page.getByRole('row').filter({ hasText: 'R-OVER' }).first().waitFor();
      await planner.go('/due');
      await planner.page.getByRole('row').filter({ hasText: 'R-3' }).first().waitFor();
    }),
    60_000,
  );

  it(
    'pastes flights, is told every line that is not readable, and then the last flight that may be made',
    watched(async () => {
      done(await house.administrator.post(`/api/requirements/${over}/void`, { reason: 'Test' }));
      await planner.go(`/positions/${fleet.airframe.id}/readiness`);
      await said('No flights to come are planned.');
      await planner.page.getByText('Flights pasted here').click();
      const lines = [1, 2, 3, 4, 5].map((n) => `T${n}\t${day(n)}\tVDL\tKRN\t10:00\t11:00`);
      await planner.page.getByLabel('Flights to come').fill(['nothing', ...lines].join('\n'));
      await planner.button('Show readiness').click();
      await said(/^Line 1: The take-off is not readable/);
      await planner.page.getByLabel('Flights to come').fill(lines.join('\n'));
      await planner.button('Show readiness').click();
      await said(/^The last flight that may be made is number 3 \(T3\)/);
      expect(await planner.page.getByRole('row').filter({ hasText: 'T4' }).textContent()).toMatch(
        /No.*Over: R-3/s,
      );

      await planner.button('Keep as the plan').click();
      await said('5 flights planned.');
      await planner.go(`/positions/${fleet.airframe.id}/readiness`);
      await said(/^The last flight that may be made is number 3/);
    }),
    90_000,
  );
});
