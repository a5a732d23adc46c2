import { toWire } from '../../platform/http/instants.js';
import { precisionOf } from '../../records/stays/precision.js';
import type { GapAcceptanceDto, RatingChangeDto, ResetDto, TraceGapDto } from './component-facts.dto.js';
import type { OpeningDto } from './opening.dto.js';

interface Voidable {
  readonly id: string;
  readonly voidedSeq: bigint | null;
  readonly voidReason: string | null;
}

export interface OpeningRecord extends Voidable {
  readonly componentId: string | null;
  readonly airframeId: string | null;
  readonly at: Date;
  readonly basis: string;
  readonly minutes: bigint | null;
  readonly cycles: bigint | null;
  readonly cycleDenominator: number;
  readonly atKind: string;
  readonly atText: string | null;
  readonly source: string;
  readonly trace: string;
  readonly traceNote: string | null;
  readonly recordedSeq: bigint;
  readonly rating: { readonly code: string } | null;
}

function voidedPart({ voidedSeq, voidReason }: Voidable) {
  return { voided: voidedSeq !== null, voidReason };
}

function whole(amount: bigint | null): number | null {
  return amount === null ? null : Number(amount);
}

interface Told {
  readonly atKind: string;
  readonly atText: string | null;
}

function momentPart({ atKind, atText }: Told) {
  return { precision: precisionOf(atKind), text: atText };
}

/** Rows recorded by one act make one opening balance, named by its first row. Total. */
export function openingsToWire(rows: readonly OpeningRecord[]): OpeningDto[] {
  const acts = new Map<string, OpeningRecord[]>();
  for (const row of rows) {
    const act = `${row.recordedSeq} ${row.basis}`;
    acts.set(act, [...(acts.get(act) ?? []), row]);
  }
  return [...acts.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const { id, componentId, airframeId, at, basis, source, traceNote } = first;
    return {
      id,
      componentId,
      airframeId,
      ...momentPart(first),
      at: toWire(at),
      basis: basis as OpeningDto['basis'],
      rows: group.map((row) => ({
        id: row.id,
        ratingCode: row.rating?.code ?? null,
        minutes: whole(row.minutes),
        cycles: whole(row.cycles),
        cycleDenominator: row.cycleDenominator,
      })),
      source,
      trace: first.trace as OpeningDto['trace'],
      traceNote,
      ...voidedPart(first),
    };
  });
}

/** A gap as the wire has it. Total. */
export function traceGapToWire(
  row: Voidable & {
    componentId: string;
    fromAt: Date;
    fromKind: string;
    fromText: string | null;
    toAt: Date;
    toKind: string;
    toText: string | null;
    note: string;
  },
): TraceGapDto {
  const { id, componentId, fromAt, fromKind, fromText, toAt, toKind, toText, note } = row;
  return {
    ...{ id, componentId, from: toWire(fromAt), fromPrecision: precisionOf(fromKind), fromText },
    ...{ to: toWire(toAt), toPrecision: precisionOf(toKind), toText, note },
    ...voidedPart(row),
  };
}

/** An acceptance as the wire has it. Total. */
export function gapAcceptanceToWire(
  row: Voidable & {
    componentId: string;
    traceGapId: string | null;
    openingId: string | null;
    acceptedBy: string;
    reference: string;
    cycles: bigint | null;
    minutes: bigint | null;
  },
): GapAcceptanceDto {
  const { id, componentId, traceGapId, openingId, acceptedBy, reference, cycles, minutes } = row;
  return {
    id,
    componentId,
    traceGapId,
    openingId,
    acceptedBy,
    reference,
    cycles: whole(cycles),
    minutes: whole(minutes),
    ...voidedPart(row),
  };
}

/** An overhaul or shop visit as the wire has it. Total. */
export function resetToWire(
  row: Voidable & Told & { componentId: string; kind: string; at: Date; evidence: string },
): ResetDto {
  const { id, componentId, kind, at, evidence } = row;
  return {
    ...{ id, componentId, kind: kind as ResetDto['kind'], at: toWire(at), ...momentPart(row), evidence },
    ...voidedPart(row),
  };
}

/** A change of rating as the wire has it. Total. */
export function ratingChangeToWire(
  row: Voidable & Told & { componentId: string; at: Date; source: string; rating: { code: string } },
): RatingChangeDto {
  const { id, componentId, at, source, rating } = row;
  return {
    ...{ id, componentId, at: toWire(at), ...momentPart(row), ratingCode: rating.code, source },
    ...voidedPart(row),
  };
}
