import type { FieldRefusal } from '../../../platform/problems/api-refusals.js';
import { refuse } from '../../../platform/problems/refusal.error.js';
import type { IntervalDto, NewRequirementDto } from '../requirement.dto.js';
import { grantFaults } from './grant-faults.js';
import { linkFaults, serialFaults } from './scope-faults.js';

type ScopeField = 'airframeTypeId' | 'positionNumber' | 'engineModelId' | 'partNumber';

const SCOPE: Readonly<Record<NewRequirementDto['anchor'], readonly ScopeField[]>> = {
  airframe: ['airframeTypeId'],
  position: ['airframeTypeId', 'positionNumber'],
  engine: ['engineModelId'],
  part: ['partNumber'],
};
const COUNTED: Readonly<Record<NewRequirementDto['anchor'], readonly NewRequirementDto['countedFrom'][]>> = {
  airframe: ['new', 'accomplishment', 'effective', 'date'],
  position: ['new', 'installation', 'accomplishment', 'effective', 'date'],
  engine: ['new', 'overhaul', 'shop-visit', 'installation', 'accomplishment', 'effective', 'date'],
  part: ['new', 'overhaul', 'shop-visit', 'installation', 'accomplishment', 'effective', 'date'],
};
const COUNTED_WORDS = {
  new: 'new',
  overhaul: 'overhaul',
  'shop-visit': 'a shop visit',
  installation: 'installation',
  accomplishment: 'the last accomplishment',
  effective: 'the day it becomes effective',
  date: 'a date',
} as const;

/** Refuses what contradicts itself: scope, what it counts from, nothing granted, days to come. Refuses: INVALID_FIELDS. */
export function refuseContradictions(asked: NewRequirementDto, today: string): void {
  const fields = [
    ...scopeFaults(asked),
    ...serialFaults(asked),
    ...linkFaults(asked),
    ...countedFaults(asked, today),
    ...grantedFaults(asked),
    ...grantFaults(asked),
  ];
  if (asked.effectiveOn > today)
    fields.push({
      field: 'effectiveOn',
      reason: 'This revision is not effective yet, and nothing is due by it.',
      fix: `Record it on the day it becomes effective; enter ${today} or earlier.`,
    });
  if (fields.length > 0) refuse({ code: 'INVALID_FIELDS', fields });
}

function scopeFaults(asked: NewRequirementDto): FieldRefusal[] {
  const { anchor } = asked;
  const allowed = SCOPE[anchor];
  const given = (['airframeTypeId', 'positionNumber', 'engineModelId', 'partNumber'] as const).filter(
    (field) => asked[field] != null,
  );
  const strange = given
    .filter((field) => !allowed.includes(field))
    .map((field) => ({
      field,
      reason: `What follows ${anchor === 'airframe' || anchor === 'engine' ? 'an' : 'a'} ${anchor} is not chosen by it.`,
      fix: `Leave it out, or use ${allowed.join(' or ')}.`,
    }));
  if (anchor !== 'part' || asked.partNumber != null) return strange;
  return [
    ...strange,
    {
      field: 'partNumber',
      reason: 'A requirement that follows a part is for one part number.',
      fix: 'Enter the part number.',
    },
  ];
}

function countedFaults({ anchor, countedFrom, fromOn }: NewRequirementDto, today: string): FieldRefusal[] {
  const allowed = COUNTED[anchor];
  if (!allowed.includes(countedFrom))
    return [
      {
        field: 'countedFrom',
        reason: `Nothing that follows ${anchor === 'airframe' ? 'an airframe' : 'a position'} counts from ${COUNTED_WORDS[countedFrom]}.`,
        fix: `Choose ${allowed.map((word) => COUNTED_WORDS[word]).join(' or ')}.`,
      },
    ];
  if ((countedFrom === 'date') !== (fromOn != null))
    return [
      countedFrom === 'date'
        ? { field: 'fromOn', reason: 'It counts from a date, and none is given.', fix: 'Enter the date.' }
        : {
            field: 'fromOn',
            reason: `It counts from ${COUNTED_WORDS[countedFrom]}, not from a date.`,
            fix: 'Leave the date out, or count from a date.',
          },
    ];
  if (fromOn != null && fromOn > today)
    return [
      {
        field: 'fromOn',
        reason: 'This date has not come: what the counters are on it nobody knows.',
        fix: `Record it on that day; enter ${today} or earlier.`,
      },
    ];
  return [];
}

const isEmpty = ({ minutes, cycles, days, months }: IntervalDto) =>
  [minutes, cycles, days, months].every((value) => value == null);

function grantedFaults({ countedFrom, threshold, repeat }: NewRequirementDto): FieldRefusal[] {
  const phases = [
    { field: 'threshold', phase: threshold },
    { field: 'repeat', phase: repeat },
  ] as const;
  const faults: FieldRefusal[] = phases.flatMap(({ field, phase }) => [
    ...(phase != null && isEmpty(phase) && phase.event == null
      ? [
          {
            field,
            reason: 'It names no hours, cycles, days or months, and no event.',
            fix: `Enter at least one, or leave the ${field} out.`,
          },
        ]
      : []),
    ...(phase?.notToExceed != null && isEmpty(phase.notToExceed)
      ? [
          {
            field: `${field}.notToExceed`,
            reason: 'It names no hours, cycles, days or months.',
            fix: 'Enter at least one, or leave the outer bound out.',
          },
        ]
      : []),
  ]);
  if (countedFrom === 'accomplishment' && threshold != null)
    faults.push({
      field: 'threshold',
      reason: 'What counts from the last accomplishment has no first time of its own.',
      fix: 'Leave the threshold out, or count the first time from something else.',
    });
  if (faults.length > 0 || threshold != null || repeat != null) return faults;
  return [
    {
      field: 'threshold',
      reason: 'Nothing says when it is due.',
      fix: 'Enter a threshold, a repeat or both.',
    },
  ];
}
