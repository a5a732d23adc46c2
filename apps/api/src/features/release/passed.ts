import type { Objection } from '@strutbook/domain/release/objection.js';
import type { ReleaseSnapshot } from '@strutbook/domain/release/snapshot.js';
import type { PassedDto } from './release.dto.js';

/** What the check looked at, and how much of each nothing is held against. Total. */
export function passedChecks(snapshot: ReleaseSnapshot, objections: readonly Objection[]): PassedDto[] {
  const held = new Set(objections.map((objection) => objection.record.id));
  const heldAs = (code: Objection['code']) =>
    new Set(
      objections.filter((objection) => objection.code === code).map((objection) => objection.record.id),
    );
  const [unknown, gaps] = [heldAs('COUNTERS_UNKNOWN'), heldAs('LOG_GAP')];
  const engines = snapshot.positions.flatMap((position) => position.engine ?? []);
  const slots = engines.flatMap((engine) => engine.limitedParts);
  const parts = slots.flatMap((slot) => slot.part ?? []);
  return [
    { label: 'Positions with an engine', count: engines.length, of: snapshot.positions.length },
    {
      label: 'Engines with known hours and cycles',
      count: engines.filter((engine) => !unknown.has(engine.componentId)).length,
      of: engines.length,
    },
    { label: 'Places for life-limited parts filled', count: parts.length, of: slots.length },
    {
      label: 'Life-limited parts with life in hand',
      count: parts.filter((part) => !held.has(part.componentId)).length,
      of: parts.length,
    },
    {
      label: 'Last flights logged without a gap',
      count: snapshot.flights.filter((leg) => !gaps.has(leg.flightId)).length,
      of: snapshot.flights.length,
    },
  ].filter((row) => row.of > 0);
}
