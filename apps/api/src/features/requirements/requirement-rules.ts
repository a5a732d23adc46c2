import type { Tx } from '../../platform/database/database.js';
import type { FieldRefusal } from '../../platform/problems/api-refusals.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import type { IntervalDto, NewRequirementDto } from './requirement.dto.js';

type ScopeField = 'airframeTypeId' | 'positionNumber' | 'engineModelId' | 'partNumber';

const SCOPE: Readonly<Record<NewRequirementDto['anchor'], readonly ScopeField[]>> = {
  airframe: ['airframeTypeId'],
  position: ['airframeTypeId', 'positionNumber'],
  engine: ['engineModelId'],
  part: ['partNumber'],
};
const COUNTED: Readonly<Record<NewRequirementDto['anchor'], readonly NewRequirementDto['countedFrom'][]>> = {
  airframe: ['new', 'date'],
  position: ['new', 'installation', 'date'],
  engine: ['new', 'overhaul', 'installation', 'date'],
  part: ['new', 'overhaul', 'installation', 'date'],
};
const COUNTED_WORDS = {
  new: 'new',
  overhaul: 'overhaul',
  installation: 'installation',
  date: 'a date',
} as const;

/** Refuses what contradicts itself: scope, what it counts from, nothing granted, days to come. Refuses: INVALID_FIELDS. */
export function refuseContradictions(asked: NewRequirementDto, today: string): void {
  const fields = [...scopeFaults(asked), ...countedFaults(asked, today), ...grantedFaults(asked)];
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

function grantedFaults({ threshold, repeat }: NewRequirementDto): FieldRefusal[] {
  const empty = (interval: IntervalDto | null | undefined) =>
    interval != null && Object.values(interval).every((value) => value == null);
  const faults = (['threshold', 'repeat'] as const)
    .filter((field) => empty({ threshold, repeat }[field]))
    .map((field) => ({
      field,
      reason: 'It names no hours, cycles, days or months.',
      fix: `Enter at least one, or leave the ${field} out.`,
    }));
  if (faults.length > 0 || threshold != null || repeat != null) return faults;
  return [
    {
      field: 'threshold',
      reason: 'Nothing says when it is due.',
      fix: 'Enter a threshold, a repeat or both.',
    },
  ];
}

/** Refuses a scope that names what is not in the register. Refuses: NOT_FOUND. */
export async function refuseUnknownScope(
  tx: Tx,
  operatorId: number,
  asked: NewRequirementDto,
): Promise<void> {
  const { airframeTypeId, positionNumber, engineModelId } = asked;
  const byId = (id: string) => ({ where: { operatorId_id: { operatorId, id } }, select: { id: true } });
  if (airframeTypeId != null)
    orNotFound(await tx.airframeType.findUnique(byId(airframeTypeId)), 'type of airframe', 'airframeTypeId');
  if (engineModelId != null)
    orNotFound(await tx.engineModel.findUnique(byId(engineModelId)), 'engine model', 'engineModelId');
  if (positionNumber != null)
    orNotFound(
      await tx.typePosition.findFirst({
        where: { operatorId, number: positionNumber, ...(airframeTypeId == null ? {} : { airframeTypeId }) },
        select: { number: true },
      }),
      airframeTypeId == null ? 'position on any type of airframe' : 'position on this type of airframe',
      'positionNumber',
    );
}
