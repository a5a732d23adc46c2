import { Injectable } from '@nestjs/common';
import type { RefusalCode } from '@strutbook/domain/refusals.js';
import type { Objection, ObjectionCode } from '@strutbook/domain/release/objection.js';
import { objectionsToEntries } from '@strutbook/domain/release/work/objections-to-entries.js';
import type { CounterFigures } from '@strutbook/domain/runs/apu-counter.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import { missingEntries, type StepFacts } from '@strutbook/domain/work/step-standing.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant, instantToWire, toInstant, toWire } from '../../platform/http/instants.js';
import { toObjection } from '../../platform/http/objection.dto.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { lockSlotChange, type SlotChange } from '../../records/changes/load-slot-change.js';
import { objectionsWithin } from '../../records/changes/objections-within.js';
import { type PlannedSlotChange, SlotChanges } from '../../records/changes/slot-changes.js';
import { EngineSnapshots } from '../../records/lives/engine-snapshots.js';
import { Structure } from '../../records/stays/structure.js';
import type { Order } from '../../records/work/orders.js';
import type { PackageHead } from '../../records/work/package-head.js';
import { recordedMoves } from '../../records/work/recorded-moves.js';
import type { MovedByStepDto } from './signing.dto.js';

export type Direction = 'removal' | 'installation';

/** A move that a signature makes. */
export interface Move {
  readonly head: PackageHead;
  readonly order: Order;
  readonly direction: Direction;
  readonly at: Instant;
  /** All steps of the package. */
  readonly steps: readonly StepFacts[];
  readonly number: bigint;
  /** What the counter showed, of an auxiliary power unit. */
  readonly reading: CounterFigures | null;
}

/** What a move did. */
export interface MadeMove {
  readonly moved: readonly MovedByStepDto[];
  readonly objections: readonly Objection[];
}

/** What forbids fitting a component in an open package; everything else is told with it. */
const FORBIDDING: ReadonlySet<ObjectionCode> = new Set<ObjectionCode>([
  'ENGINE_NOT_AUTHORISED',
  'NOT_AUTHORISED',
  'OVER_LIMIT',
  'AT_LIMIT',
  'LIMITED_PART_UNTRACED',
  'PART_UNSERVICEABLE',
  'PAPERS_REJECTED',
]);

/** The fields of a signature, where the rules speak of a boundary, a slot or a serial on an order. */
const FIELD_TO_BLAME: Readonly<Partial<Record<RefusalCode, string>>> = {
  INSIDE_A_FLIGHT: 'performedAt',
  ENDS_BEFORE_START: 'performedAt',
  BEFORE_OPENING: 'performedAt',
  BEFORE_MANUFACTURE: 'performedAt',
  AFTER_SCRAP: 'performedAt',
  STAY_OVERLAP: 'performedAt',
  NOT_OPEN: 'performedAt',
  SLOT_OCCUPIED: 'order',
  SAME_PLACE: 'order',
  WRONG_KIND: 'order',
  NOT_INSTALLED_THERE: 'order',
  ALREADY_INSTALLED: 'order',
};

/** Removals and installations that take effect with the signature of their step. */
@Injectable()
export class StepMoves {
  constructor(
    private readonly slotChanges: SlotChanges,
    private readonly structure: Structure,
    private readonly engines: EngineSnapshots,
  ) {}

  /** Locks what the move will touch; call it before the package and the step are locked. */
  async lock(tx: Tx, operatorId: number, { order, direction, at }: Pick<Move, 'order' | 'direction' | 'at'>) {
    const change = changeOf({ order, direction, at, reading: null });
    if (change !== null) await lockSlotChange(tx, operatorId, change);
  }

  /**
   * Moves the component of the order at the moment its step was performed, unless that is recorded already: an undone
   * signature leaves the move as it is.
   * Refuses: CAPTURES_MISSING, INSTALLATION_REFUSED, MOVE_RECORDED, INSTALLED_BEFORE_REMOVED, and as planChange does.
   */
  async make(tx: Tx, operatorId: number, move: Move): Promise<MadeMove> {
    const { head, order, direction, at, steps, number } = move;
    const change = changeOf(move);
    if (change === null) return { moved: [], objections: [] };
    const component = direction === 'removal' ? order.outgoing : order.incoming;
    const recorded = await recordedMoves(tx, operatorId, { packageId: head.id, slotId: order.slot.id });
    const before = direction === 'removal' ? recorded.removal : recorded.installation;
    if (before !== null) {
      if (toInstant(before.at) !== at || before.componentId !== component?.id)
        refuse({
          code: 'MOVE_RECORDED',
          what: `${direction} of ${before.serialNumber}`,
          at: toWire(before.at),
          asked: instantToWire(at),
        });
      return { moved: [], objections: [] };
    }
    if (direction === 'installation' && recorded.removal !== null && toInstant(recorded.removal.at) > at)
      refuse(
        { code: 'INSTALLED_BEFORE_REMOVED', removedAt: toInstant(recorded.removal.at), installedAt: at },
        'performedAt',
      );
    refuseUnlikeOrder(steps, direction);
    if (direction === 'installation') refusePapers(steps);
    const planned = await this.slotChanges.plan(tx, operatorId, change, FIELD_TO_BLAME);
    refuseForbidden(planned.plan.objections);
    const work = { packageId: head.id, packageNumber: head.number, number };
    const moved = await this.slotChanges.write(tx, operatorId, planned, work);
    const held = await this.heldAgainst(tx, operatorId, planned, at);
    refuseForbidden(held);
    const { serialNumber } = component ?? { serialNumber: '' };
    return {
      moved: moved.map((id) => ({ id, serialNumber, direction, at: instantToWire(at) })),
      objections: [...planned.plan.objections, ...held],
    };
  }

  /** A part is judged in the engine it now hangs in; what would forbid it takes the whole act back. */
  private async heldAgainst(
    tx: Tx,
    operatorId: number,
    { loaded: { slot, change } }: PlannedSlotChange,
    at: Instant,
  ): Promise<readonly Objection[]> {
    if (change.incomingId === null || slot.parentId === null) return [];
    const placed = { componentId: change.incomingId, parentId: slot.parentId, at: fromInstant(at) };
    return objectionsWithin(tx, operatorId, placed, { structure: this.structure, engines: this.engines });
  }
}

/** One side of an order as a change; null when the order moves nothing on that side. */
function changeOf({
  order: { slot, outgoing, incoming, rating, removedTo, reason },
  direction,
  at,
  reading,
}: Pick<Move, 'order' | 'direction' | 'at' | 'reading'>): SlotChange | null {
  const rest = {
    slotId: slot.id,
    boundary: { kind: 'instant', at },
    reason,
    readings: {
      outgoing: direction === 'removal' ? reading : null,
      incoming: direction === 'installation' ? reading : null,
    },
    readingFields: { outgoing: 'counterReading', incoming: 'counterReading' },
  } as const;
  if (direction === 'installation')
    return incoming === null
      ? null
      : { ...rest, outgoing: null, incomingId: incoming.id, ratingCode: rating?.code ?? null };
  if (outgoing === null) return null;
  if (removedTo === null)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'order',
      reason: `The order does not say where ${outgoing.serialNumber} goes.`,
      fix: 'Amend the order and name the location.',
    });
  const comesOff = { serial: outgoing.serialNumber, toLocationId: removedTo.id };
  return { ...rest, outgoing: comesOff, incomingId: null, ratingCode: null };
}

/** Whichever step read the plate or the position: what was last found to differ from the order moves nothing. */
function refuseUnlikeOrder(steps: readonly StepFacts[], direction: Direction): void {
  const kind = direction === 'removal' ? 'component-off' : 'component-on';
  const missing = steps.flatMap(({ definition, entries }) =>
    missingEntries({
      definition: { ...definition, captures: definition.captures.filter((capture) => capture.kind === kind) },
      entries,
    }).filter((each) => each.code === 'CAPTURE_REJECTED'),
  );
  if (missing.length > 0) refuse({ code: 'CAPTURES_MISSING', missing });
}

function refusePapers(steps: readonly StepFacts[]): void {
  refuseForbidden(
    steps
      .flatMap((step) => objectionsToEntries(step, { toolUses: [], orders: [] }))
      .filter((objection) => objection.code === 'PAPERS_REJECTED'),
  );
}

function refuseForbidden(objections: readonly Objection[]): void {
  const forbidding = objections.filter(
    ({ code, severity }) => severity === 'blocking' && FORBIDDING.has(code),
  );
  if (forbidding.length > 0)
    refuse({ code: 'INSTALLATION_REFUSED', objections: forbidding.map(toObjection) });
}
