import { isPreservationOver } from '@strutbook/domain/serviceability/unfit.js';
import { toWire } from '../../platform/http/instants.js';
import type { SpareDto, SpareReasonDto } from './spare.dto.js';
import type { HeldPart, SpareRow } from './spares.sql.js';

/** A spare on the wire, as of a day. Total. */
export function spareToWire(row: SpareRow, today: string): SpareDto {
  const { kind, partNumber, serialNumber, description, engineModelId, engineModel, ratingCode } = row;
  return {
    componentId: row.id,
    kind: kind as SpareDto['kind'],
    ...{ partNumber, serialNumber, description, engineModelId, engineModel, ratingCode },
    owner: row.owner,
    lessor: row.lessor,
    location: row.location,
    locationKind: row.locationKind,
    since: row.since === null ? null : toWire(row.since),
    fit: row.fit,
    reasons: reasonsOf(row),
    left: {
      cycles: row.cycles,
      cyclesPart: row.cyclesPart,
      minutes: row.minutes,
      minutesPart: row.minutesPart,
      goodThrough: row.goodThrough,
      ratingOpen: row.ratingOpen,
    },
    nextRequirement: nextOf(row),
    preservation:
      row.goodUntil === null
        ? null
        : { goodUntil: row.goodUntil, over: isPreservationOver(row.goodUntil, today) },
    tag:
      row.tagStatus === null
        ? null
        : { status: row.tagStatus as NonNullable<SpareDto['tag']>['status'], tagNumber: row.tagNumber ?? '' },
    openVisitId: row.visitId,
  };
}

function nextOf({ requirement }: SpareRow): SpareDto['nextRequirement'] {
  if (requirement === null) return null;
  const { id: requirementId, code, title, dimension, remaining, dueOn, verified } = requirement;
  return { requirementId, code, title, dimension, remaining, dueOn, verified };
}

function reasonsOf(row: SpareRow): SpareReasonDto[] {
  const held = (row.held ?? []).map((part) => reasonOf(part, part.serial === row.serialNumber));
  return [...held, ...ofPlace(row)];
}

function reasonOf({ serial, code, detail }: HeldPart, isItself: boolean): SpareReasonDto {
  const who = isItself ? 'It' : serial;
  const whose = isItself ? 'Its life' : `The life of ${serial}`;
  switch (code) {
    case 'unserviceable':
      return { code, text: `${who} is tagged unserviceable (${detail}).` };
    case 'quarantine':
      return { code, text: `${who} is tagged for quarantine (${detail}).` };
    case 'in-shop':
      return { code, text: `${who} was sent to a shop (${detail}), and no return is recorded.` };
    case 'over-limit':
      return { code, text: `${whose} is over its limit.` };
    case 'at-limit':
      return { code, text: `${whose} is at its limit.` };
    case 'not-authorised':
      return { code, text: `${who} is not authorised at the rating it last ran at.` };
    default:
      return { code: 'not-verified', text: `${whose} is not verified.` };
  }
}

function ofPlace({ location, locationKind, visitId }: SpareRow): SpareReasonDto[] {
  if (location === null) return [{ code: 'nowhere', text: 'No place is recorded for it.' }];
  if (locationKind === 'quarantine')
    return [{ code: 'in-quarantine-store', text: `It is in quarantine at ${location}.` }];
  if (locationKind === 'shop' && visitId === null)
    return [{ code: 'at-shop', text: `It is at ${location}, a shop, without a visit recorded.` }];
  return [];
}
