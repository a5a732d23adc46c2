import { toCounters } from '../../platform/http/counters.dto.js';
import { toWire } from '../../platform/http/instants.js';
import { reasonInWords } from '../../records/due-points/windows.js';
import type { PositionSlot } from '../../records/stays/structure.js';
import type { ComponentCounters } from '../../records/usage/counters.js';
import type { InstalledEngineDto, PositionCardDto, TightestPartDto } from './positions.dto.js';
import { type EngineClock, soonestOf } from './soonest.js';
import { type Limiting, statusOfEngine, tightestOf } from './tightest.js';

/** A component at a position with what is shown of it. */
export interface ShownComponent {
  readonly id: string;
  readonly serialNumber: string;
  readonly partNumber: string;
  readonly model: string | null;
}

/** What the cards are made of. */
export interface CardFacts {
  readonly slots: readonly PositionSlot[];
  readonly components: ReadonlyMap<string, ShownComponent>;
  readonly counters: ReadonlyMap<string, ComponentCounters>;
  readonly ratingCodes: ReadonlyMap<string, string>;
  readonly limiting: readonly Limiting[];
  /** What days are projected from, by the position an engine is at. */
  readonly clockOf: (positionId: string) => EngineClock;
}

const UNKNOWN = { minutes: null, cycles: null };

/** The cards of the positions, by airframe, in the order of their numbers. Total. */
export function positionCards(facts: CardFacts): ReadonlyMap<string, PositionCardDto[]> {
  const limiting = grouped(facts.limiting, (row) => row.engineId);
  const cards = new Map<string, PositionCardDto[]>();
  for (const slots of grouped(facts.slots, (slot) => slot.positionId).values()) {
    const [first] = slots;
    if (first === undefined) continue;
    const main = slots.find((slot) => slot.slotKind !== 'pod') ?? first;
    const pod = slots.find((slot) => slot.slotKind === 'pod');
    const card: PositionCardDto = {
      positionId: first.positionId,
      number: first.number,
      kind: first.positionKind === 'apu' ? 'apu' : 'engine',
      mount: first.mount as PositionCardDto['mount'],
      label: first.label,
      engine: engineOf(main, facts, limiting),
      emptySince: main.emptySince === null ? null : toWire(main.emptySince),
      pod: podOf(pod, facts),
    };
    const ofAirframe = cards.get(first.airframeId);
    if (ofAirframe === undefined) cards.set(first.airframeId, [card]);
    else ofAirframe.push(card);
  }
  return cards;
}

function engineOf(
  slot: PositionSlot,
  facts: CardFacts,
  limiting: ReadonlyMap<string, readonly Limiting[]>,
): InstalledEngineDto | null {
  const component = slot.componentId === null ? undefined : facts.components.get(slot.componentId);
  if (component === undefined || slot.fromAt === null) return null;
  const counters = facts.counters.get(component.id);
  const limits = limiting.get(component.id) ?? [];
  const tightest = tightestOf(limits);
  const soonest = soonestOf(limits, facts.clockOf(slot.positionId));
  return {
    id: component.id,
    serialNumber: component.serialNumber,
    partNumber: component.partNumber,
    model: component.model,
    ratingCode: facts.ratingCodes.get(component.id) ?? null,
    installedAt: toWire(slot.fromAt),
    precision: slot.fromKind === 'instant' ? 'minute' : slot.fromKind === 'after-page' ? 'page' : 'day',
    sinceNew: toCounters(counters?.sinceNew ?? UNKNOWN),
    sinceInstalled: toCounters(counters?.sinceInstalled ?? UNKNOWN),
    status: statusOfEngine(tightest),
    tightest: tightest === null ? null : partOf(tightest),
    soonest:
      soonest === null
        ? null
        : { ...partOf(soonest.part), projectedOn: soonest.projectedOn, basis: soonest.basis },
  };
}

function partOf({
  componentId,
  description,
  serialNumber,
  dimension,
  remaining,
  reason,
  flagged,
  dueOn,
}: Limiting): TightestPartDto {
  return {
    componentId,
    description,
    serialNumber,
    remainingCycles: dimension === 'cycles' ? remaining : null,
    remainingMinutes: dimension === 'minutes' ? remaining : null,
    remainingDays: dueOn === null ? null : remaining,
    goodThrough: dueOn,
    flagged,
    reason: reasonInWords(reason),
  };
}

function podOf(slot: PositionSlot | undefined, { components }: CardFacts): PositionCardDto['pod'] {
  const pod = slot?.componentId == null ? undefined : components.get(slot.componentId);
  return pod === undefined || slot?.fromAt == null
    ? null
    : { id: pod.id, serialNumber: pod.serialNumber, installedAt: toWire(slot.fromAt) };
}

function grouped<T>(rows: readonly T[], keyOf: (row: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const group = groups.get(keyOf(row));
    if (group === undefined) groups.set(keyOf(row), [row]);
    else group.push(row);
  }
  return groups;
}
