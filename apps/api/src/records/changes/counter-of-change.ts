import { add, fraction } from '@strutbook/domain/units/fraction.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import { zeroCounts } from '@strutbook/domain/usage/counts.js';
import { cycles } from '@strutbook/domain/usage/cycle-rule.js';
import type { Counters } from '@strutbook/domain/usage/since.js';
import type { Tx } from '../../platform/database/database.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { addedBy, loadReadings, recordReading, requireReading } from '../counting/counter-readings.js';
import { counterRuleAt, loadCycleRules } from '../counting/cycle-rules.js';
import type { LoadedSlotChange, ToldReading } from './load-slot-change.js';
import type { PlannedSlotChange } from './slot-changes.js';

/** What of a change has a counter of its own: an auxiliary power unit that comes off or goes on. */
function sidesOf({ change, facts }: LoadedSlotChange, at: Instant) {
  const there = facts.slot.stays.find((stay) => stay.from < at && (stay.to === null || stay.to >= at));
  const ids = {
    outgoing: change.outgoing === null ? null : (there?.componentId ?? null),
    incoming: change.incomingId,
  };
  return (['outgoing', 'incoming'] as const).flatMap((side) => {
    const component = facts.components.get(ids[side] ?? '');
    return component === undefined
      ? []
      : [{ side, component, told: change.readings[side], field: change.readingFields[side] }];
  });
}

/**
 * Refuses a change of an auxiliary power unit without what its counter showed, or with what it can't have shown:
 * READING_MISSING, READING_NOT_ASKED, and as checkReading does.
 */
export async function requireReadings(
  tx: Tx,
  operatorId: number,
  loaded: LoadedSlotChange,
  at: Instant,
): Promise<void> {
  const isCounted = loaded.slot.kind === 'apu';
  for (const { side, component, told, field } of sidesOf(loaded, at)) {
    const { id, serial } = component;
    if (!isCounted && told !== null) refuse({ code: 'READING_NOT_ASKED', serial }, field);
    if (!isCounted) continue;
    const direction = side === 'incoming' ? 'on' : 'off';
    if (told === null) refuse({ code: 'READING_MISSING', serial, direction }, field);
    await requireReading(tx, operatorId, { componentId: id, at, figures: told, fresh: null }, field);
  }
}

/** Records what the counters showed as the change was made; the stays that ended and began by it demanded that. */
export async function writeReadings(
  tx: Tx,
  operatorId: number,
  { loaded, resolved, outgoing, incoming }: PlannedSlotChange,
  {
    ended,
    installed,
    number,
  }: { readonly ended: readonly string[]; readonly installed: string | null; readonly number: bigint },
): Promise<void> {
  const { readings, readingFields } = loaded.change;
  const base = { at: resolved.at, fresh: null, source: null, number };
  if (readings.outgoing !== null && outgoing !== null) {
    const figures = readings.outgoing;
    const stayId = loaded.facts.slot.stays.find((stay) => ended.includes(stay.id))?.id ?? null;
    const off = { ...base, componentId: outgoing.id, kind: 'removed', figures, stayId } as const;
    await recordReading(tx, operatorId, off, readingFields.outgoing);
  }
  if (readings.incoming !== null && incoming !== null) {
    const figures = readings.incoming;
    const on = { ...base, componentId: incoming.id, kind: 'installed', figures, stayId: installed } as const;
    await recordReading(tx, operatorId, on, readingFields.incoming);
  }
}

/** Counters with what a reading adds that is not recorded yet. */
export async function countersWith(
  tx: Tx,
  operatorId: number,
  {
    id,
    engineModelId,
    at,
    reading,
  }: {
    readonly id: string;
    readonly engineModelId: string | null;
    readonly at: Instant;
    readonly reading: ToldReading | null;
  },
): Promise<(counters: Counters) => Counters> {
  if (reading === null) return (counters) => counters;
  const readings = (await loadReadings(tx, operatorId, [id])).get(id) ?? [];
  const added = addedBy(readings, at, reading);
  const rules = engineModelId === null ? [] : await loadCycleRules(tx, operatorId, [engineModelId]);
  const rule = engineModelId === null ? undefined : counterRuleAt(rules, engineModelId, at);
  const used = rule === undefined ? null : cycles({ ...zeroCounts, starts: added.starts }, rule);
  return ({ minutes, cycles: before }) => ({
    minutes: minutes === null ? null : minutes + added.minutes,
    cycles: before === null ? null : add(before, used ?? fraction(0)),
  });
}
