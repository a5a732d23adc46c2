import { Injectable } from '@nestjs/common';
import type { EngineSnapshot, LimitedPartSlot } from '@strutbook/domain/release/snapshot.js';
import { ceil } from '@strutbook/domain/units/fraction.js';
import type { Tx } from '../../platform/database/database.js';
import { type FilledSlot, Structure } from '../stays/structure.js';
import { Counters } from '../usage/counters.js';
import { Lives, type PartInLife } from './lives.js';
import { ratingsAt } from './ratings.js';

/** Engines as the release check sees them: identity, counters, and every place for a limited part. */
@Injectable()
export class EngineSnapshots {
  constructor(
    private readonly structure: Structure,
    private readonly counters: Counters,
    private readonly lives: Lives,
  ) {}

  /** The snapshots of these engines, now (null) or at an instant; `willRunAt` names ratings that count instead of those recorded. */
  async of(
    tx: Tx,
    operatorId: number,
    engineIds: readonly string[],
    at: Date | null,
    willRunAt: ReadonlyMap<string, string> = new Map(),
  ): Promise<ReadonlyMap<string, EngineSnapshot>> {
    const ids = [...engineIds];
    const slots = await this.structure.beneath(tx, operatorId, ids, at);
    const partIds = slots.flatMap((slot) => slot.componentId ?? []);
    const components = await tx.component.findMany({
      where: { operatorId, id: { in: [...ids, ...partIds] } },
      include: { engineModel: { select: { maker: true, designation: true } } },
    });
    const counters = await this.counters.of(tx, operatorId, ids, at);
    const lives = await this.lives.of(tx, operatorId, partIds, at, willRunAt);
    const ratingOf = new Map([...(await ratingsAt(tx, operatorId, ids, at)), ...willRunAt]);
    const ratings = await tx.rating.findMany({ where: { operatorId, id: { in: [...ratingOf.values()] } } });
    const byId = new Map(components.map((component) => [component.id, component]));
    const root = rootsOf(slots, ids);
    return new Map(
      components
        .filter((component) => ids.includes(component.id))
        .map((engine): [string, EngineSnapshot] => {
          const known = counters.get(engine.id)?.sinceNew;
          const ratingId = ratingOf.get(engine.id) ?? null;
          return [
            engine.id,
            {
              componentId: engine.id,
              serial: engine.serialNumber,
              modelId: engine.engineModelId ?? '',
              modelName: engine.engineModel?.designation ?? engine.description,
              authorised: null,
              // Only a record against it (quarantine) makes it unserviceable here; installed, it has none.
              serviceable: true,
              ratingId,
              ratingName: ratings.find((rating) => rating.id === ratingId)?.code ?? null,
              totals: {
                minutes: known?.minutes ?? null,
                cycles: known?.cycles == null ? null : ceil(known.cycles),
              },
              limitedParts: slots
                .filter((slot) => slot.lifeLimited && root.get(slot.slotId) === engine.id)
                .map((slot) => limitedSlot(slot, byId, lives)),
            },
          ];
        }),
    );
  }
}

/** The engine each slot is beneath. */
function rootsOf(slots: readonly FilledSlot[], engineIds: readonly string[]): ReadonlyMap<string, string> {
  const rootOfComponent = new Map(engineIds.map((id) => [id, id]));
  const rootOfSlot = new Map<string, string>();
  for (const slot of slots) {
    const root = rootOfComponent.get(slot.parentId);
    if (root === undefined) continue;
    rootOfSlot.set(slot.slotId, root);
    if (slot.componentId !== null) rootOfComponent.set(slot.componentId, root);
  }
  return rootOfSlot;
}

function limitedSlot(
  slot: FilledSlot,
  components: ReadonlyMap<string, { id: string; partNumber: string; serialNumber: string }>,
  lives: ReadonlyMap<string, PartInLife>,
): LimitedPartSlot {
  const part = slot.componentId === null ? undefined : components.get(slot.componentId);
  if (part === undefined) return { slotId: slot.slotId, slotName: slot.name, part: null };
  const life = lives.get(part.id)?.life ?? {
    kind: 'unsubstantiated' as const,
    reasons: [{ code: 'NO_LIMIT_RECORDED' as const, ratingId: null }],
  };
  return {
    slotId: slot.slotId,
    slotName: slot.name,
    part: {
      componentId: part.id,
      partNumber: part.partNumber,
      serial: part.serialNumber,
      serviceable: true,
      life,
    },
  };
}
