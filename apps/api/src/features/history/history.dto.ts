import { CyclesDto } from '../../platform/http/counters.dto.js';

/** A fact that identifies a subject. */
export class IdentityDto {
  name!: string;
  value!: string;
}

/** What a history is about. */
export class HistorySubjectDto {
  kind!: 'airframe' | 'component';
  id!: string;
  label!: string;
  identity!: IdentityDto[];
}

/** Why a line does not count any more. */
export class StruckDto {
  recordedAt!: string;
  by!: string;
  reason!: string;
}

/** What a line adds to the counters. */
export class AddedDto {
  /** Whole minutes; null when not known. */
  minutes!: number | null;
  cycles!: CyclesDto | null;
}

/** Counters after a line. */
export class LineTotalsDto {
  /** Whole minutes; null when not known. */
  minutes!: number | null;
  /** Whole cycles, rounded up; null when not known. */
  cycles!: number | null;
}

/** The entry of the journal behind a line. */
export class LineEntryDto {
  number!: number | null;
  recordedAt!: string;
  by!: string;
  /** The beginning of the entry's hash. */
  hash!: string | null;
}

/** The package a line belongs to. */
export class LineWorkDto {
  packageId!: string;
  number!: string;
  /** The step it is about; null where it is about the whole package. */
  stepId!: string | null;
}

/** A line of a history; the printed document shows the same members in the same order. */
export class HistoryLineDto {
  at!: string;
  /** How the moment is known where no minute was recorded. */
  placed!: string | null;
  title!: string;
  detail!: string;
  struck!: StruckDto | null;
  adds!: AddedDto | null;
  totals!: LineTotalsDto;
  /** Null for what is in no package; not printed. */
  work!: LineWorkDto | null;
  entry!: LineEntryDto;
}

/** Where a history ends. */
export class HistoryTotalsDto {
  lines!: number;
  minutes!: number | null;
  cycles!: number | null;
}

/** Everything that happened to an airframe or a component, in order. */
export class HistoryDto {
  subject!: HistorySubjectDto;
  lines!: HistoryLineDto[];
  totals!: HistoryTotalsDto;
}
