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
    const components = await tx.component.findMany({
      where: { operatorId, id: { in: ids } },
      include: { engineModel: { select: { designation: true } } },
    });
    const counters = await this.counters.of(tx, operatorId, ids, at);
    const root = rootsOf(slots, ids);
    const lives = await this.livesOf(tx, operatorId, { slots, components, at, willRunAt });
    const ratingOf = new Map([...(await ratingsAt(tx, operatorId, ids, at)), ...willRunAt]);
    const ratings = await tx.rating.findMany({ where: { operatorId, id: { in: [...ratingOf.values()] } } });
    return new Map(
      components.map((engine): [string, EngineSnapshot] => {
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
              .map((slot) => limitedSlot(slot, lives)),
          },
        ];
      }),
    );
  }

  /** The limited parts were read with the slots; only where an engine stands on top is theirs told by it. */
  private livesOf(
    tx: Tx,
    operatorId: number,
    { slots, components, at, willRunAt }: LivesAsk,
  ): Promise<ReadonlyMap<string, PartInLife>> {
    const limited = slots.flatMap(({ componentId, part }) =>
      componentId === null || part?.lifeLimited !== true ? [] : [{ id: componentId, ...part }],
    );
    const ids = limited.map(({ id }) => id);
    const engines = components.filter((component) => component.kind === 'engine').map(({ id }) => id);
    if (engines.length < components.length) return this.lives.of(tx, operatorId, ids, at, willRunAt);
    const rootOfSlot = rootsOf(slots, engines);
    const engineOf = new Map(
      slots.flatMap(({ slotId, componentId }) => {
        const engine = rootOfSlot.get(slotId);
        return componentId === null || engine === undefined ? [] : [[componentId, engine] as const];
      }),
    );
    return this.lives.of(tx, operatorId, ids, at, willRunAt, { parts: limited, engineOf });
  }
}

interface LivesAsk {
  readonly slots: readonly FilledSlot[];
  readonly components: readonly { readonly id: string; readonly kind: string }[];
  readonly at: Date | null;
  readonly willRunAt: ReadonlyMap<string, string>;
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
