import { Injectable } from '@nestjs/common';
import type { EngineSnapshot, LimitedPartSlot } from '@strutbook/domain/release/snapshot.js';
import { ceil } from '@strutbook/domain/units/fraction.js';
import type { Tx } from '../../platform/database/database.js';
import { type FilledSlot, Structure } from '../stays/structure.js';
import { Counters, sinceNewAt } from '../usage/counters.js';
import { Use, type Uses } from '../usage/use.js';
import { type KnownEngine, type KnownParts, Lives, type PartInLife } from './lives.js';

interface TopRow extends KnownEngine {
  readonly kind: string;
  readonly serialNumber: string;
  readonly description: string;
  readonly designation: string | null;
  readonly ratingCode: string | null;
}

/** Engines as the release check sees them: identity, counters, and every place for a limited part. */
@Injectable()
export class EngineSnapshots {
  constructor(
    private readonly structure: Structure,
    private readonly counters: Counters,
    private readonly lives: Lives,
    private readonly use: Use,
  ) {}

  /**
   * The snapshots of these engines, now (null) or at an instant; `willRunAt` names ratings that count instead of those
   * recorded. What is no engine is told with the limited parts beneath it. `beneath` is what hangs beneath them, where the
   * caller has read it.
   */
  async of(
    tx: Tx,
    operatorId: number,
    engineIds: readonly string[],
    at: Date | null,
    willRunAt: ReadonlyMap<string, string> = new Map(),
    beneath: readonly FilledSlot[] | null = null,
  ): Promise<ReadonlyMap<string, EngineSnapshot>> {
    const ids = [...engineIds];
    const all = beneath ?? (await this.structure.beneath(tx, operatorId, ids, at));
    const root = rootsOf(all, ids);
    const slots = all.filter(({ slotId }) => root.has(slotId));
    const tops = await loadTops(tx, operatorId, { ids, at, willRunAt });
    const limited = slots.flatMap(({ componentId, part }) =>
      componentId === null || part?.lifeLimited !== true ? [] : [{ id: componentId, ...part }],
    );
    const uses = await this.use.of(
      tx,
      operatorId,
      [...ids, ...limited.map(({ id }) => id)].map((componentId) => ({ componentId, at })),
    );
    const lives = await this.livesOf(tx, operatorId, { slots, tops, limited, uses, at, willRunAt });
    // An auxiliary power unit counts by its own counter.
    const apus = tops.filter(({ kind }) => kind === 'apu').map(({ id }) => id);
    const own = apus.length === 0 ? null : await this.counters.of(tx, operatorId, apus, at);
    return new Map(
      tops.map((top): [string, EngineSnapshot] => {
        const { minutes, cycles } = own?.get(top.id)?.sinceNew ?? sinceNewAt(top.id, at, uses);
        return [
          top.id,
          {
            componentId: top.id,
            serial: top.serialNumber,
            modelId: top.engineModelId ?? '',
            modelName: top.designation ?? top.description,
            authorised: null,
            // Only a record against it (quarantine) makes it unserviceable here; installed, it has none.
            serviceable: true,
            ratingId: top.ratingId,
            ratingName: top.ratingCode,
            totals: { minutes, cycles: cycles === null ? null : ceil(cycles) },
            limitedParts: slots
              .filter((slot) => slot.lifeLimited && root.get(slot.slotId) === top.id)
              .map((slot) => limitedSlot(slot, lives)),
          },
        ];
      }),
    );
  }

  /** Beneath engines all that lives need was read with the slots; a module or part off an engine is asked for anew. */
  private livesOf(
    tx: Tx,
    operatorId: number,
    { slots, tops, limited, uses, at, willRunAt }: LivesAsk,
  ): Promise<ReadonlyMap<string, PartInLife>> {
    const engines = tops.filter(({ kind }) => kind === 'engine');
    if (engines.length < tops.length) {
      const ids = limited.map(({ id }) => id);
      return this.lives.of(tx, operatorId, ids, at, willRunAt);
    }
    const rootOfSlot = rootsOf(
      slots,
      engines.map(({ id }) => id),
    );
    const engineOf = new Map(
      slots.flatMap(({ slotId, componentId }) => {
        const engine = rootOfSlot.get(slotId);
        return componentId === null || engine === undefined ? [] : [[componentId, engine] as const];
      }),
    );
    return this.lives.ofKnown(tx, operatorId, { parts: limited, engineOf, engines, uses }, at);
  }
}

interface LivesAsk {
  readonly slots: readonly FilledSlot[];
  readonly tops: readonly TopRow[];
  readonly limited: KnownParts['parts'];
  readonly uses: Uses;
  readonly at: Date | null;
  readonly willRunAt: ReadonlyMap<string, string>;
}

/** The components asked for, with model and rating. */
async function loadTops(
  tx: Tx,
  operatorId: number,
  {
    ids,
    at,
    willRunAt,
  }: {
    readonly ids: readonly string[];
    readonly at: Date | null;
    readonly willRunAt: ReadonlyMap<string, string>;
  },
): Promise<TopRow[]> {
  const [row] = await tx.$queryRaw<{ tops: string }[]>`/* planned once */
    SELECT coalesce(json_agg(json_build_object('id', c.id, 'kind', c.kind, 'serialNumber', c.serial_number,
             'description', c.description, 'engineModelId', c.engine_model_id, 'designation', m.designation,
             'lifeMethod', m.life_method, 'ratingId', r.id, 'ratingCode', r.code) ORDER BY c.id), '[]')::text AS tops
      FROM component c
      LEFT JOIN engine_model m ON m.operator_id = c.operator_id AND m.id = c.engine_model_id
      LEFT JOIN LATERAL (
        SELECT rating_id FROM rating_change
         WHERE operator_id = c.operator_id AND component_id = c.id AND voided_seq IS NULL
           AND (${at}::timestamptz IS NULL OR at <= ${at}::timestamptz)
         ORDER BY at DESC, recorded_seq DESC LIMIT 1) now ON true
      LEFT JOIN rating r ON r.operator_id = c.operator_id
        AND r.id = coalesce((${JSON.stringify(Object.fromEntries(willRunAt))}::jsonb ->> c.id::text)::uuid, now.rating_id)
     WHERE c.operator_id = ${operatorId}::int AND c.id = ANY (${[...ids]}::uuid[])`;
  return JSON.parse(row?.tops ?? '[]') as TopRow[];
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
