import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { done } from '../support/scenario/problem.js';
import { engineChange, openShop, type Shop } from '../support/work/shop.js';
import { capture, type ShownStep, stepOf, torque, workOf } from '../support/work/work-desk.js';

interface Use {
  readonly entryId: string;
  readonly packageNumber: string;
  readonly stepTitle: string;
  readonly label: string;
  readonly point: string | null;
  readonly typed: string;
  readonly verdict: string;
  readonly voided: boolean;
  readonly personName: string;
}

interface UsedTool {
  readonly calibrations: readonly { readonly id: string }[];
  readonly uses: readonly Use[];
  readonly usesInAll: number;
}

let shop: Shop;
let bolts: ShownStep;
let packageNumber: string;

beforeAll(async () => {
  shop = await openShop();
  const { id, number } = await engineChange(shop);
  packageNumber = number;
  bolts = stepOf(await workOf(shop.technician, id), 'install');
}, 120_000);

afterAll(() => shop?.close(), 30_000);

const enter = async (point: string, indication: string): Promise<ShownStep> =>
  done(
    await capture(shop.technician, bolts.id, {
      capture: 'mount-bolts',
      typed: torque(point, indication),
      toolId: shop.toolId,
    }),
  );

const tool = async (): Promise<UsedTool> =>
  done(await shop.planner.get<UsedTool>(`/api/tools/${shop.toolId}`));

describe('the uses of a tool', () => {
  it('are every reading taken with it, the rejected and the voided too, the newest first', async () => {
    const first = await enter('1', '110.0');
    const second = await enter('3', '118.4');
    const wrong = second.entries.at(-1)?.id;
    done(await shop.technician.post(`/api/step-entries/${wrong}/void`, { reason: 'Misread' }));

    const { uses, usesInAll } = await tool();

    const same = { packageNumber, stepTitle: bolts.definition.title, label: 'Forward mount bolt' };
    expect(uses).toEqual([
      expect.objectContaining({ ...same, point: '3', typed: '118.4 N·m', verdict: 'rejected', voided: true }),
      expect.objectContaining({
        ...{ ...same, point: '1', typed: '110.0 N·m', verdict: 'accepted', voided: false },
        ...{ entryId: first.entries.at(-1)?.id, personName: 'Tom Technician' },
      }),
    ]);
    expect(usesInAll).toBe(2);
  });
});

describe('a calibration voided after it was used', () => {
  it('leaves what was accepted as it was judged, and lets nothing more be accepted', async () => {
    const before = (await tool()).uses;
    const [calibration] = (await tool()).calibrations;
    done(
      await shop.planner.post(`/api/tool-calibrations/${calibration?.id}/void`, {
        reason: 'Certificate of another wrench',
      }),
    );
    const after = await enter('3', '110.0');
    const last = after.entries.at(-1);

    expect((await tool()).uses.slice(1)).toEqual(before);
    expect(last?.judgement.verdict).toBe('rejected');
    expect(last?.judgement.reasons.map(({ code }) => code)).toEqual(['TOOL_NOT_CALIBRATED']);
  });
});
