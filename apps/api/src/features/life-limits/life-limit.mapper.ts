import { dayToWire } from '../../platform/http/instants.js';
import type { LifeLimitDto } from './life-limit.dto.js';

interface StoredLimit {
  readonly id: string;
  readonly partNumber: string;
  readonly engineModelId: string;
  readonly authorisation: string;
  readonly cycles: number | null;
  readonly minutes: bigint | null;
  readonly calendarSpan: number | null;
  readonly calendarUnit: string | null;
  readonly calendarFrom: string | null;
  readonly monthRule: string | null;
  readonly basis: string;
  readonly document: string;
  readonly revision: string;
  readonly effectiveOn: Date;
  readonly voidedSeq: bigint | null;
  readonly voidReason: string | null;
  readonly rating: { readonly code: string } | null;
  readonly engineModel: { readonly maker: string; readonly designation: string };
}

/** A limit as the wire has it; `standing` tells of its id how it stands. Total. */
export function lifeLimitToWire(
  row: StoredLimit,
  standing: (id: string) => LifeLimitDto['standing'],
): LifeLimitDto {
  const {
    id,
    partNumber,
    engineModelId,
    cycles,
    minutes,
    document,
    revision,
    effectiveOn,
    voidedSeq,
    voidReason,
  } = row;
  return {
    id,
    partNumber,
    engineModelId,
    engineModel: `${row.engineModel.maker} ${row.engineModel.designation}`,
    ratingCode: row.rating?.code ?? null,
    authorisation: row.authorisation as LifeLimitDto['authorisation'],
    cycles,
    minutes: minutes === null ? null : Number(minutes),
    calendarSpan: row.calendarSpan,
    calendarUnit: row.calendarUnit as LifeLimitDto['calendarUnit'],
    calendarFrom: row.calendarFrom as LifeLimitDto['calendarFrom'],
    monthRule: row.monthRule as LifeLimitDto['monthRule'],
    basis: row.basis as LifeLimitDto['basis'],
    document,
    revision,
    effectiveOn: dayToWire(effectiveOn),
    standing: standing(id),
    voided: voidedSeq !== null,
    voidReason,
  };
}
