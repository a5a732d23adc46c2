import { Injectable } from '@nestjs/common';
import type { EngineSnapshot, LimitedPartSlot } from '@strutbook/domain/release/snapshot.js';
import { ceil } from '@strutbook/domain/units/fraction.js';
import type { Tx } from '../../platform/database/database.js';
import type { FilledSlot } from '../stays/structure.sql.js';
import { Counters, sinceNewAt } from '../usage/counters.js';
import { type HangingFacts, loadHangingFacts } from './hanging-facts.js';
import { Lives, type PartInLife } from './lives.js';
import { unfitWithin } from './unfit-within.js';

/** Engines as the release check sees them: identity, counters, and every place for a limited part. */
@Injectable()
export class EngineSnapshots {
  constructor(
    private readonly counters: Counters,
    private readonly lives: Lives,
  ) {}

  /**
   * The snapshots of these engines, now (null) or at an instant; `willRunAt` names ratings that count instead of those
   * recorded. What is no engine is told with the limited parts beneath it.
   */
  async of(
    tx: Tx,
    operatorId: number,
    engineIds: readonly string[],
    at: Date | null,
    willRunAt?: ReadonlyMap<string, string>,
  ): Promise<ReadonlyMap<string, EngineSnapshot>> {
    const facts = await loadHangingFacts(tx, operatorId, { of: { componentIds: engineIds }, at, willRunAt });
    return this.ofHanging(tx, operatorId, engineIds, facts);
  }

  /** The same of some of the components that were read with all beneath them. */
  async ofHanging(
    tx: Tx,
    operatorId: number,
    engineIds: readonly string[],
    facts: HangingFacts,
  ): Promise<ReadonlyMap<string, EngineSnapshot>> {
    const { at, uses } = facts;
    const lives = this.lives.ofHanging(facts);
    const limited = limitedSlots(facts.slots, engineIds);
    const unfit = unfitWithin(facts, engineIds);
    const heads = engineIds.flatMap((id) => facts.heads.get(id) ?? []);
    // An auxiliary power unit counts by its own counter.
    const apus = heads.filter(({ kind }) => kind === 'apu').map(({ id }) => id);
    const own = apus.length === 0 ? null : await this.counters.of(tx, operatorId, apus, at);
    return new Map(
      heads.map((head): [string, EngineSnapshot] => {
        const { minutes, cycles } = own?.get(head.id)?.sinceNew ?? sinceNewAt(head.id, at, uses);
        return [
          head.id,
          {
            componentId: head.id,
            serial: head.serialNumber,
            modelId: head.engineModelId ?? '',
            modelName: head.designation ?? head.description,
            authorised: null,
            // What tags and shops hold against it is told by `unfit`.
            serviceable: true,
            ratingId: head.ratingId,
            ratingName: head.ratingCode,
            totals: { minutes, cycles: cycles === null ? null : ceil(cycles) },
            unfit: unfit.get(head.id) ?? [],
            limitedParts: (limited.get(head.id) ?? []).map((slot) => limitedSlot(slot, lives)),
          },
        ];
      }),
    );
  }
}

/** The slots for limited parts beneath each of these components. */
function limitedSlots(
  slots: readonly FilledSlot[],
  topIds: readonly string[],
): ReadonlyMap<string, readonly FilledSlot[]> {
  const topOf = new Map(topIds.map((id) => [id, id]));
  const found = new Map<string, FilledSlot[]>(topIds.map((id) => [id, []]));
  for (const slot of slots) {
    const top = topOf.get(slot.parentId);
    if (top === undefined) continue;
    if (slot.componentId !== null) topOf.set(slot.componentId, top);
    if (slot.lifeLimited) found.get(top)?.push(slot);
  }
  return found;
}

function limitedSlot(
  { slotId, name: slotName, componentId, part }: FilledSlot,
  lives: ReadonlyMap<string, PartInLife>,
): LimitedPartSlot {
  if (componentId === null || part === null) return { slotId, slotName, part: null };
  const life = lives.get(componentId)?.life ?? {
    kind: 'unsubstantiated' as const,
    reasons: [{ code: 'NO_LIMIT_RECORDED' as const, ratingId: null }],
  };
  const { partNumber, serialNumber: serial } = part;
  return { slotId, slotName, part: { componentId, partNumber, serial, serviceable: true, life } };
}
