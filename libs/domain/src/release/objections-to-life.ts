import type { Life, UnsubstantiatedReason } from '../life/life.js';
import type { Objection, ObjectionCode } from './objection.js';

/** Makes an objection about one part, with its serial number and place already told. */
export type HoldAgainst = (
  code: ObjectionCode,
  severity: Objection['severity'],
  detail?: Objection['detail'],
) => Objection;

/**
 * What is held against flying on with a part of this life: not authorised, not traced, no limit recorded, at
 * its limit (remaining 0 may have happened and blocks the next flight), over it, or short of the planned
 * stay. Total.
 */
export function objectionsToLife(
  life: Life,
  held: HoldAgainst,
  plannedStayCycles: number | null,
): readonly Objection[] {
  switch (life.kind) {
    case 'not-authorised':
      return [held('NOT_AUTHORISED', 'blocking')];
    case 'not-limited':
      return [];
    case 'unsubstantiated':
      return objectionsToReasons(life.reasons, held);
    case 'limited':
      return objectionsToRemaining(life, held, plannedStayCycles);
  }
}

function objectionsToReasons(
  reasons: readonly UnsubstantiatedReason[],
  held: HoldAgainst,
): readonly Objection[] {
  const noLimit = reasons.some((reason) => reason.code === 'NO_LIMIT_RECORDED');
  const untraced = reasons.filter((reason) => reason.code !== 'NO_LIMIT_RECORDED');
  return [
    ...(untraced.length > 0 || reasons.length === 0
      ? [held('LIMITED_PART_UNTRACED', 'blocking', { missing: untraced.map(wordsFor).join('; ') })]
      : []),
    ...(noLimit ? [held('NO_LIMIT_RECORDED', 'blocking')] : []),
  ];
}

function wordsFor(reason: UnsubstantiatedReason): string {
  switch (reason.code) {
    case 'TRACE_GAP':
      return `a gap in its trace (${reason.gap.description})`;
    case 'RATING_UNKNOWN':
      return 'the rating it ran at';
    case 'CYCLES_UNKNOWN':
      return 'its cycles';
    case 'MINUTES_UNKNOWN':
      return 'its hours';
    case 'DAY_UNKNOWN':
      return EVENT_WORDS[reason.from];
    case 'NO_LIMIT_RECORDED':
      return 'its limit';
  }
}

const EVENT_WORDS = {
  new: 'the day it was made',
  'first-installation': 'the day it was first installed',
  overhaul: 'the day of its overhaul',
} as const;

type LimitedLife = Extract<Life, { kind: 'limited' }>;

function objectionsToRemaining(
  life: LimitedLife,
  held: HoldAgainst,
  plannedStay: number | null,
): readonly Objection[] {
  const left = [life.remaining, life.remainingMinutes].filter((value): value is number => value !== null);
  const detail = {
    remaining: life.remaining,
    limit: life.limit,
    remainingMinutes: life.remainingMinutes,
    minutesLimit: life.minutesLimit,
    ...(life.goodThrough === null ? {} : { goodThrough: life.goodThrough }),
  };
  // Through its last day a calendar life is good: there 0 is no end yet.
  const expired = life.remainingDays !== null && life.remainingDays < 0;
  const objections: Objection[] = [];
  if (expired || left.some((value) => value < 0)) objections.push(held('OVER_LIMIT', 'blocking', detail));
  else if (left.some((value) => value === 0)) objections.push(held('AT_LIMIT', 'blocking', detail));
  else if (plannedStay !== null && life.remaining !== null && life.remaining < plannedStay)
    objections.push(held('SHORT_OF_PLANNED_STAY', 'advisory', { ...detail, plannedStay }));
  if (life.flagged) objections.push(held('WORST_CASE_ACCEPTED', 'advisory', detail));
  return objections;
}
