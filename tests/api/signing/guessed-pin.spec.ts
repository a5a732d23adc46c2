import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HttpClient } from '../../support/http-client.js';
import { signedIn } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { type Hangar, openHangar, openOneStep } from '../../support/signing/hangar.js';
import { sign } from '../../support/signing/work-desk.js';

const PIN = '271828';

let hangar: Hangar;

beforeAll(async () => {
  hangar = await openHangar({ days: 0 });
  done(await hangar.inspector.post('/api/session/pin', { password: hangar.password, pin: PIN }));
}, 120_000);

afterAll(() => hangar?.close(), 30_000);

describe('the PIN of another person', () => {
  it('is guessed a few times only, from whatever tablet, and its owner alone has to wait', async () => {
    const { office, technician, certifier, password } = hangar;
    const { step } = await openOneStep(hangar);
    done(await sign(technician, step.id, { at: 5000, secret: password }));
    const guess = async (tablet: HttpClient, secret: string) =>
      problemOf(
        await sign(tablet, step.id, {
          ...{ at: 5001, meaning: 'inspection', method: 'pin', secret, signInName: 'ins' },
        }),
      ).code;

    const codes: string[] = [];
    for (let tried = 0; tried < 6; tried += 1) codes.push(await guess(technician, `11111${tried}`));
    expect(codes).toEqual([...Array(5).fill('SIGNER_NOT_PROVEN'), 'TOO_MANY_ATTEMPTS']);
    // Another tablet begins no new count, and the right number is not told from a wrong one while it waits.
    expect(await guess(certifier, '222222')).toBe('TOO_MANY_ATTEMPTS');
    expect(await guess(certifier, PIN)).toBe('TOO_MANY_ATTEMPTS');

    // Nobody else waits, and the owner is not locked out of their own session.
    done(await sign(certifier, step.id, { at: 5001, meaning: 'inspection', secret: password }));
    const owner = await signedIn(office.api, { ...office.founded, signInName: 'ins' });
    expect(done(await owner.get('/api/session'))).toMatchObject({ hasPin: true });
  });
});
