import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { DAY } from '../../support/scenario/in-service.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { recordRequirement, type StatusAnswer } from '../../support/scenario/requirements.js';
import { type Hangar, openHangar } from '../../support/signing/hangar.js';
import { blocking, checkOf, release, withCertificate } from '../../support/signing/release-desk.js';
import { openPackage, sign, stepsOf } from '../../support/signing/work-desk.js';

let hangar: Hangar;
let requirementId: string;

beforeAll(async () => {
  hangar = await openHangar();
}, 120_000);

afterAll(() => hangar?.close(), 30_000);

const engineId = (index: number): string => hangar.fleet.engines[index]?.id ?? '';

/** A package on the airframe whose one step is done, to meet these requirements. */
async function finished(requirements: readonly object[] = []): Promise<string> {
  const { planner, technician, password: secret, fleet } = hangar;
  const id = await openPackage(planner, {
    ...{ kind: 'inspection', airframeId: fleet.airframe.id, requirements },
    steps: [{ title: 'Look at the inlet.', inspection: 'none' }],
  });
  const [step] = Object.values(await stepsOf(planner, id));
  done(await sign(technician, step?.id ?? '', { at: 3 * DAY, secret }));
  return id;
}

const statusOf = async (code: string, id: string) =>
  done(await hangar.certifier.get<readonly StatusAnswer[]>(`/api/components/${id}/requirements`)).find(
    (row) => row.code === code,
  )?.status;

describe('a requirement that is over', () => {
  it('blocks the release of a package that does not meet it', async () => {
    const { office, certifier, password } = hangar;
    const id = await finished();
    const seen = await checkOf(certifier, id);
    expect(blocking(seen)).toEqual([]);

    // Both engines have 1,003 cycles since new.
    requirementId = done(
      await recordRequirement(office.administrator, 'R-OVER', { threshold: { cycles: 990 } }),
    ).id;
    const check = await checkOf(certifier, id);

    expect(blocking(check)).toEqual(['REQUIREMENT_OVER', 'REQUIREMENT_OVER']);
    expect(check.objections[0]).toMatchObject({
      subject: {
        kind: 'requirement',
        id: requirementId,
        label: expect.stringContaining('R-OVER, Test R-OVER on '),
      },
      reason: 'It is over: 13 cycles past 990.',
    });
    expect(problemOf(await release(certifier, id, password, seen)).code).toBe('RELEASE_BLOCKED');
  });

  it('is met by the package that names it, and counts anew from its release', async () => {
    const { certifier, password } = hangar;
    const [first, second] = [engineId(0), engineId(1)];
    const half = await finished([{ requirementId, componentId: first }]);
    expect(blocking(await checkOf(certifier, half))).toEqual(['REQUIREMENT_OVER']);

    const id = await finished([first, second].map((componentId) => ({ requirementId, componentId })));
    expect(blocking(await checkOf(certifier, id))).toEqual([]);
    expect(await statusOf('R-OVER', first)).toBe('over');

    const released = done(await release(certifier, id, password));

    expect([await statusOf('R-OVER', first), await statusOf('R-OVER', second)]).not.toContain('over');
    expect(blocking(await checkOf(certifier, half))).toEqual([]);
    const { lines } = done(
      await certifier.get<{ lines: readonly { title: string; detail: string }[] }>(
        `/api/components/${first}/history`,
      ),
    );
    expect(lines.filter(({ title }) => title === 'Requirement met')).toEqual([
      expect.objectContaining({
        detail: expect.stringContaining(`R-OVER, Test R-OVER; Release ${released.number}`),
      }),
    ]);
    expect((await withCertificate(certifier, released.id)).certificate).not.toBeNull();
  });
});

describe('a requirement whose due is not verified', () => {
  it('blocks the release', async () => {
    const { office, certifier } = hangar;
    const id = await finished();
    done(await recordRequirement(office.administrator, 'R-OVERHAUL', { countedFrom: 'overhaul' }));
    const check = await checkOf(certifier, id);
    expect(new Set(blocking(check))).toEqual(new Set(['REQUIREMENT_NOT_VERIFIED']));
    expect(check.objections[0]?.reason).toMatch(/^When it is due is not verified: /);
  });
});
