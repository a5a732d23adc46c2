import type { Objection } from '@strutbook/domain/release/objection.js';
import type { ReleaseSnapshot } from '@strutbook/domain/release/snapshot.js';
import { countsOf } from '@strutbook/domain/work/accounts.js';
import type { Capture } from '@strutbook/domain/work/capture.js';
import { isFinished, lastEntry, type StepFacts } from '@strutbook/domain/work/step-standing.js';
import type { PassedDto } from './release.dto.js';

/** What the check looked at, and how much of each nothing is held against. Total. */
export function passedChecks(snapshot: ReleaseSnapshot, objections: readonly Objection[]): PassedDto[] {
  const held = new Set(objections.map((objection) => objection.record.id));
  const heldAs = (code: Objection['code']) =>
    new Set(
      objections.filter((objection) => objection.code === code).map((objection) => objection.record.id),
    );
  const [unknown, gaps] = [heldAs('COUNTERS_UNKNOWN'), heldAs('LOG_GAP')];
  const engines = [
    ...snapshot.positions.flatMap((position) => position.engine ?? []),
    ...(snapshot.component === null ? [] : [snapshot.component.as]),
  ];
  const slots = engines.flatMap((engine) => engine.limitedParts);
  const parts = slots.flatMap((slot) => slot.part ?? []);
  return [
    ...passedWork(snapshot, objections),
    {
      label: 'Positions with an engine',
      count: snapshot.positions.filter((position) => position.engine !== null).length,
      of: snapshot.positions.length,
    },
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
      label: 'Last flights logged without a gap, or with its note',
      count: snapshot.flights.filter((leg) => !gaps.has(leg.flightId)).length,
      of: snapshot.flights.length,
    },
  ].filter((row) => row.of > 0);
}

/** The work by steps: what of it nothing is held against. */
function passedWork({ work, requirements }: ReleaseSnapshot, objections: readonly Objection[]): PassedDto[] {
  const count = (codes: readonly Objection['code'][]) =>
    objections.filter((objection) => codes.includes(objection.code)).length;
  const steps = work.steps;
  const inspected = steps.filter((step) => step.definition.inspection === 'independent');
  const torques = steps.flatMap((step) => step.definition.captures).flatMap(pointsOf);
  const counts = countsOf(steps);
  return [
    { label: 'Steps signed as they stand', count: steps.length - count(['STEP_UNSIGNED']), of: steps.length },
    {
      label: 'Inspections by another person',
      count:
        inspected.filter(isFinished).length - count(['ONE_PERSON_REINSPECTION', 'INSPECTION_BY_SAME_PERSON']),
      of: inspected.length,
    },
    { label: 'Torques in range', count: steps.flatMap(acceptedPoints).length, of: torques.length },
    {
      label: 'Connections, cowls and safety items closed',
      count: work.items.length - count(['ITEM_OPEN']),
      of: work.items.length,
    },
    { label: 'Counts that agree', count: counts.length - count(['COUNTS_DIFFER']), of: counts.length },
    {
      label: 'Ordered changes made as ordered',
      count:
        work.orders.length -
        objections.filter(({ code, detail }) => code.startsWith('ORDER_') && detail['place'] !== undefined)
          .length,
      of: work.orders.length,
    },
    {
      label: 'Requirements in order',
      count: requirements.length - count(['REQUIREMENT_OVER', 'REQUIREMENT_NOT_VERIFIED']),
      of: requirements.length,
    },
  ];
}

function pointsOf(capture: Capture): readonly string[] {
  return capture.kind === 'torque' ? capture.points : [];
}

function acceptedPoints(step: StepFacts): readonly string[] {
  return step.definition.captures.flatMap((capture) =>
    pointsOf(capture).filter(
      (point) => lastEntry(step.entries, capture.key, point)?.judgement.verdict === 'accepted',
    ),
  );
}
