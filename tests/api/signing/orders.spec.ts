import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../../support/database.js';
import type { Answer } from '../../support/http-client.js';
import { DAY } from '../../support/scenario/in-service.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { type Hangar, openChange, openHangar } from '../../support/signing/hangar.js';
import {
  asOrder,
  capture,
  type OrderToWrite,
  type ShownStep,
  sign,
  stepsOf,
  typed,
} from '../../support/signing/work-desk.js';

let hangar: Hangar;

beforeAll(async () => {
  hangar = await openHangar();
}, 120_000);

afterAll(() => hangar?.close(), 30_000);

interface Amended {
  readonly version: number;
  readonly confirmedBy: string;
  readonly entriesToRenew: readonly { readonly entryId: string }[];
}

const PLACE_ONE = { positionNumber: 1, outgoingSerial: 'ZZ-E1', incomingSerial: 'ZZ-E3' } as const;
const PLACE_TWO = { positionNumber: 2, outgoingSerial: 'ZZ-E2', incomingSerial: 'ZZ-E3' } as const;

const amend = (
  packageId: string,
  order: OrderToWrite,
  { version = 1, by = 'tec', secret = hangar.password } = {},
): Promise<Answer<Amended>> =>
  hangar.planner.post(
    `/api/packages/${packageId}/order`,
    {
      order: asOrder({ slot: 'engine', ...order }),
      reason: 'The order named the wrong position',
      confirmation: { signInName: by, method: 'password', secret },
    },
    { ifMatch: `"v${version}"` },
  );

const step = (steps: Readonly<Record<string, ShownStep>>, key: string): ShownStep => {
  const found = steps[key];
  if (found === undefined) throw new Error(`no step ${key}`);
  return found;
};

describe('an order that turns out wrong', () => {
  it('stops the work until two persons amend it; what was read against it is read anew', async () => {
    const { technician, inspector, password: secret } = hangar;
    // The order says position 2; the removal is at position 1.
    const { id, steps } = await openChange(hangar, PLACE_TWO);
    const [safe, remove, accept] = [step(steps, 'make-safe'), step(steps, 'remove'), step(steps, 'accept')];
    done(await capture(technician, safe.id, typed.safe));
    done(await sign(technician, safe.id, { at: 3 * DAY, secret }));
    done(await capture(technician, accept.id, typed.papers('ZZ-E3')));
    done(await sign(technician, accept.id, { at: 3 * DAY, secret }));
    done(await capture(technician, remove.id, typed.off('ZZ-E1', '1')));
    expect(problemOf(await sign(technician, remove.id, { at: 3 * DAY, secret })).code).toBe(
      'CAPTURES_MISSING',
    );

    expect(problemOf(await amend(id, PLACE_ONE, { by: 'pla' })).fields?.[0]?.field).toBe(
      'confirmation.signInName',
    );
    expect(problemOf(await amend(id, PLACE_ONE, { secret: 'wrong' }))).toMatchObject({
      code: 'SIGNER_NOT_PROVEN',
      fields: [{ field: 'confirmation.secret' }],
    });
    expect(problemOf(await amend(id, PLACE_ONE, { by: 'admin' })).code).toBe('NOT_ALLOWED');
    const amended = done(await amend(id, PLACE_ONE));

    expect(amended).toMatchObject({ version: 2, confirmedBy: 'Tec Nician' });
    const after = await stepsOf(inspector, id);
    expect(['make-safe', 'remove', 'accept'].map((key) => step(after, key).standing)).toEqual([
      'signed',
      'open',
      'changed',
    ]);
    expect(step(after, 'accept').signatures.map(({ undone, counts }) => [undone, counts])).toEqual([
      [false, false],
    ]);
    expect(step(after, 'remove').entries.map((entry) => entry.voided)).toEqual([true]);
    done(await capture(technician, remove.id, typed.off('ZZ-E1', '1')));
    const removed = done(await sign(technician, remove.id, { at: 3 * DAY, secret }));
    expect(removed.moved[0]?.serialNumber).toBe('ZZ-E1');
  });

  it('is not amended on a side that moved, and is on the other', async () => {
    const { technician, password: secret } = hangar;
    const { id, steps } = await openChange(hangar, PLACE_TWO);
    const [safe, remove, install] = [step(steps, 'make-safe'), step(steps, 'remove'), step(steps, 'install')];
    done(await capture(technician, safe.id, typed.safe));
    done(await sign(technician, safe.id, { at: 4 * DAY, secret }));
    done(await capture(technician, remove.id, typed.off('ZZ-E2', '2')));
    done(await sign(technician, remove.id, { at: 4 * DAY, secret }));

    const other = { positionNumber: 1, incomingSerial: 'ZZ-E4' } as const;
    expect(problemOf(await amend(id, other)).fields?.[0]?.field).toMatch(/^order\./);
    const amended = done(
      await amend(id, { positionNumber: 2, outgoingSerial: 'ZZ-E2', incomingSerial: 'ZZ-E4' }),
    );

    expect(amended.entriesToRenew).toEqual([]);
    expect(step(await stepsOf(technician, id), 'remove').standing).toBe('signed');
    done(await capture(technician, install.id, typed.on('ZZ-E4', '2')));
    done(await sign(technician, install.id, { at: 4 * DAY, secret }));
    const late = await amend(id, { positionNumber: 2, incomingSerial: 'ZZ-E5' }, { version: 2 });
    expect(problemOf(late)).toMatchObject({
      fields: [{ reason: 'ZZ-E4 is installed by this package already.' }],
    });
  });

  it('keeps the order before it, the reason and who confirmed', async () => {
    const { id } = await openChange(hangar, {
      positionNumber: 2,
      outgoingSerial: 'ZZ-E4',
      incomingSerial: 'ZZ-E5',
    });
    done(
      await amend(id, { positionNumber: 2, outgoingSerial: 'ZZ-E4', incomingSerial: 'ZZ-E2' }, { by: 'cer' }),
    );
    expect(problemOf(await amend(id, PLACE_ONE, { version: 1 })).code).toBe('STALE');

    const rows = await withClient(hangar.office.database.adminUrl, async (client) => {
      const { rows: kept } = await client.query(
        `SELECT o.void_reason, c.serial_number AS incoming, p.full_name AS confirmed_by
           FROM ordered_change o JOIN component c ON c.operator_id = o.operator_id AND c.id = o.incoming_id
           LEFT JOIN person p ON p.operator_id = o.operator_id AND p.id = o.confirmed_by
          WHERE o.package_id = $1 ORDER BY o.recorded_seq`,
        [id],
      );
      return kept as unknown[];
    });
    expect(rows).toEqual([
      { void_reason: 'The order named the wrong position', incoming: 'ZZ-E5', confirmed_by: null },
      { void_reason: null, incoming: 'ZZ-E2', confirmed_by: 'Cer Tifier' },
    ]);
  });
});
