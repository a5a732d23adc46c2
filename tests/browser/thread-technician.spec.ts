import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { atMinute, logFlights, type RecordedChange, recordChange } from '../support/scenario/acts.js';
import { daily, type InService, putInService } from '../support/scenario/in-service.js';
import { instantAt } from '../support/scenario/instants.js';
import { done } from '../support/scenario/problem.js';
import type { Desk } from '../support/thread/desk.js';
import { deskIn, engage, type House, openHouse } from '../support/thread/house.js';
import { watched } from '../support/thread/watched.js';

interface PackageAnswer {
  readonly id: string;
  readonly number: string;
  readonly status: string;
  readonly release: { readonly id: string; readonly number: string } | null;
}

let house: House;
let fleet: InService;
let technician: Desk;
let certifier: Desk;
let password: string;
/** The package of the second airframe, against which nothing is held. */
let readyPackage: RecordedChange;

beforeAll(async () => {
  house = await openHouse();
  const { administrator } = house;
  password = house.founded.password;
  fleet = await putInService(administrator, { days: 3 });
  const second = fleet.airframes[1]?.id ?? '';
  for (const [positionNumber, incomingSerial] of [
    [1, 'ZZ-E4'],
    [2, 'ZZ-E5'],
  ] as const)
    readyPackage = done(
      await recordChange(administrator, {
        airframeId: second,
        positionNumber,
        slot: 'engine',
        outgoingSerial: null,
        incomingSerial,
        boundary: atMinute(60),
      }),
    );
  done(await logFlights(administrator, second, daily(2)));
  done(
    await administrator.post('/api/trace-gaps', {
      componentId: fleet.engines[2]?.partIds[0],
      from: instantAt(-90_000),
      to: instantAt(-80_000),
      note: 'No records from the earlier operator',
    }),
  );
  technician = await deskIn(house);
  await technician.signIn(
    await engage(house, { signInName: 'tech', fullName: 'Tess Nichols', roles: ['technician'] }),
  );
  certifier = await deskIn(house);
  await certifier.signIn(
    await engage(house, {
      signInName: 'roe',
      fullName: 'Lee Roe',
      roles: ['certifying-staff'],
      licence: 'CS 4711',
    }),
  );
}, 180_000);

afterAll(() => house?.close(), 30_000);

const packages = async (airframeId: string) =>
  done(await house.administrator.get<{ rows: PackageAnswer[] }>(`/api/packages?airframeId=${airframeId}`))
    .rows;

async function packageWith(serial: string): Promise<PackageAnswer> {
  for (const { id } of await packages(fleet.airframe.id)) {
    const found = done(
      await house.administrator.get<
        PackageAnswer & { changes: { incoming: { serialNumber: string } | null }[] }
      >(`/api/packages/${id}`),
    );
    if (found.changes.some(({ incoming }) => incoming?.serialNumber === serial)) return found;
  }
  throw new Error(`no package with ${serial}`);
}

describe('a technician', () => {
  it(
    'is refused an engine change whose outgoing serial is not there, beside its field',
    watched(async () => {
      const { page } = technician;
      await technician.goToPlace('Work');
      await technician.link('Log a past change').click();
      await page.getByRole('heading', { level: 1, name: 'Log a past change' }).waitFor();
      await technician.field('Airframe').selectOption({ label: 'ZZ-101' });
      await technician.field('Position').selectOption({ label: 'Position 1: ZZ-E1' });
      await technician.field('Changed at').fill('2025-01-04 09:30');
      await technician.field('Serial that comes off').fill('ZZ-E2');
      await technician.field('Where it goes').selectOption({ label: 'Store (store)' });
      const on = technician.field('Serial that goes on');
      await on.fill('ZZ-E3');
      await page.getByRole('option', { name: /ZZ-E3/ }).click();
      await technician.field('Why').fill('Vibration above the limit');
      await technician.button('Check the change').click();

      const off = technician.field('Serial that comes off');
      await page.getByRole('region', { name: 'There is a problem' }).waitFor();
      expect(await technician.saidBeside(off)).toMatch(/ZZ-E2/);
      expect(await off.inputValue()).toBe('ZZ-E2');
      expect(await technician.field('Changed at').inputValue()).toBe('2025-01-04 09:30');
      expect(await page.getByRole('heading', { name: 'What will be recorded' }).count()).toBe(0);
      expect(await packages(fleet.airframe.id)).toHaveLength(2);
    }),
  );

  it(
    'sees the counters of both engines at that instant and what is held against the change, then records it',
    watched(async () => {
      const { page } = technician;
      await technician.field('Serial that comes off').fill('ZZ-E1');
      await technician.button('Check the change').click();
      const preview = page.getByRole('region', { name: 'What will be recorded' });
      await preview.waitFor();
      const text = (await preview.innerText()).replace(/\s+/g, ' ');
      expect(text).toContain('4 Jan 2025 09:30Z');
      expect(text).toMatch(/Comes off, serial ZZ-E1 .* Since new, at that instant 1,006:00 h, 1,003 cycles/i);
      expect(text).toMatch(/Goes on, serial ZZ-E3 .* Since new, at that instant 1,000:00 h, 1,000 cycles/i);
      expect(text).toContain('ZZ-E3-H');
      expect(text).toContain('Caution');

      await technician.button('Record the change with what is held against it').click();
      await page.getByRole('heading', { level: 1, name: /^Change EC-\d+/ }).waitFor();
      await technician.settled();
      expect(await page.getByText('Not released').count()).toBe(1);
      expect(await page.getByText('Vibration above the limit').count()).toBe(1);
    }),
  );

  it(
    'sees the board change: the new engine stands at the position',
    watched(async () => {
      const { page } = technician;
      await technician.goToPlace('Positions');
      const row = page.getByRole('listitem', { name: 'ZZ-101' });
      await row.getByRole('link', { name: 'ZZ-E3', exact: true }).waitFor();
      expect(await row.getByRole('link', { name: 'ZZ-E1', exact: true }).count()).toBe(0);

      await row.getByRole('link', { name: 'ZZ-101', exact: true }).click();
      await technician.settled();
      const board = page.getByRole('region', { name: 'Positions of ZZ-101' });
      expect(await board.getByRole('img').getAttribute('aria-label')).toContain(
        'Position 1, left wing: ZZ-E3',
      );
      await board.getByRole('link', { name: /Position 1, ZZ-E3/ }).waitFor();
    }),
  );

  it(
    'cannot release: the check says who can',
    watched(async () => {
      const { id } = await packageWith('ZZ-E3');
      await technician.go(`/packages/${id}/release-check`);
      const release = technician.button('Release to service');
      expect(await release.getAttribute('aria-disabled')).toBe('true');
      expect(
        await technician.page
          .getByText('Releasing needs the authority of: Certifying staff. You do not hold it.')
          .count(),
      ).toBe(1);
      expect(await technician.page.getByLabel('Your password, again').count()).toBe(0);
    }),
  );
});

describe('certifying staff', () => {
  it(
    'is shown what blocks the release of the change, and cannot sign it',
    watched(async () => {
      const { page } = certifier;
      const blocked = await packageWith('ZZ-E3');
      await certifier.goToPlace('Work');
      await certifier.link(blocked.number).click();
      await page.getByRole('heading', { level: 1, name: `Change ${blocked.number}` }).waitFor();
      await certifier.link('Release check').click();
      await page.getByRole('heading', { level: 1, name: `Release check ${blocked.number}` }).waitFor();
      await certifier.settled();

      await page.getByText('Not ready: 1 point open').waitFor();
      const objection = page.getByRole('listitem').filter({ hasText: 'What to do:' }).first();
      const words = (await objection.innerText()).replace(/\s+/g, ' ');
      expect(words).toContain('Not verified');
      expect(words).toContain('ZZ-E3-H');
      expect(await objection.getByRole('link', { name: /ZZ-E3-H/ }).getAttribute('href')).toBe(
        `/components/${fleet.engines[2]?.partIds[0]}`,
      );
      const release = certifier.button('Release to service');
      expect(await release.getAttribute('aria-disabled')).toBe('true');
      expect(await page.getByText(/^Off while 1 point is open: .*ZZ-E3-H/).count()).toBe(1);
      expect(await page.getByLabel('Your password, again').count()).toBe(0);
      await release.click({ force: true });
      expect(await packageWith('ZZ-E3')).toMatchObject({ status: 'open', release: null });
    }),
  );

  it(
    'is refused with a wrong password, beside the field, and nothing is signed',
    watched(async () => {
      const { page } = certifier;
      await certifier.go(`/packages/${readyPackage.id}/release-check`);
      await page.getByText('Ready: nothing blocks the release').waitFor();
      const field = certifier.field('Your password, again');
      await field.fill('a long but wrong password');
      await certifier.button('Release to service').click();
      await page.getByRole('region', { name: 'There is a problem' }).waitFor();

      expect(await certifier.saidBeside(field)).toMatch(/password/i);
      expect(done(await house.administrator.get(`/api/packages/${readyPackage.id}`))).toMatchObject({
        status: 'open',
        release: null,
      });
    }),
  );

  it(
    'signs with the password again and sees the note: name, certificate, statement, hash',
    watched(async () => {
      const { page } = certifier;
      await certifier.field('Your password, again').fill(password);
      await certifier.button('Release to service').click();
      await page.getByRole('heading', { level: 1, name: `Change ${readyPackage.number}` }).waitFor();
      await certifier.settled();

      const { release } = done(
        await house.administrator.get<PackageAnswer>(`/api/packages/${readyPackage.id}`),
      );
      const note = done(
        await house.administrator.get<{ number: string; statement: string; contentHash: string }>(
          `/api/releases/${release?.id}`,
        ),
      );
      const shown = page.getByRole('region', { name: `Release ${note.number}` });
      await shown.waitFor();
      const text = (await shown.innerText()).replace(/\s+/g, ' ');
      expect(text).toContain('Signed by Lee Roe, CS 4711');
      expect(text).toContain(note.statement.replace(/\s+/g, ' '));
      expect(note.contentHash).toMatch(/^[0-9a-f]{64}$/);
      expect(text.replace(/\s/g, '')).toContain(note.contentHash);
      await page.getByText(`Released, ${note.number}`).waitFor();
      expect(await certifier.link('Release check').count()).toBe(0);
    }),
  );
});
