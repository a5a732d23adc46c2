import { CountersDto, CyclesDto } from '../../../platform/http/counters.dto.js';
import { CalendarLifeDto, LifeDto } from './life.dto.js';

/** A limit in force at a rating. */
export class SheetLimitDto {
  /** Null: at any rating. */
  ratingCode!: string | null;
  authorisation!: 'limited' | 'not-limited' | 'not-authorised';
  cycles!: number | null;
  minutes!: number | null;
  calendar!: CalendarLifeDto[];
}

/** What was used at a rating since new. */
export class SheetUseDto {
  /** Null: at a rating nobody knows, or where ratings do not matter. */
  ratingCode!: string | null;
  cycles!: CyclesDto | null;
  minutes!: number | null;
}

/** A limited part of the sheet, or a place where one is expected and none is recorded. */
export class SheetPartDto {
  /** What it is in. */
  module!: string;
  place!: string;
  componentId!: string | null;
  description!: string;
  partNumber!: string;
  serialNumber!: string;
  limits!: SheetLimitDto[];
  usedAt!: SheetUseDto[];
  sinceNew!: CountersDto;
  life!: LifeDto | null;
  /** Whether all it rests on is on record, or a worst case stands for some of it, or something is missing. */
  trace!: 'verified' | 'worst-case' | 'not-verified';
  /** Reasons, acceptances and gaps, in words. */
  flags!: string[];
}

/** Whose status it is. */
export class SheetSubjectDto {
  id!: string;
  kind!: 'engine' | 'module' | 'part' | 'pod' | 'apu';
  description!: string;
  partNumber!: string;
  serialNumber!: string;
  /** Maker and designation. */
  model!: string | null;
  ratingCode!: string | null;
  /** Where it is, in words. */
  place!: string;
  sinceNew!: CountersDto;
}

/** The status of the life-limited parts of an engine, or of what else holds some, as at an instant. */
export class LifeSheetDto {
  title!: string;
  operator!: string;
  /** As at. */
  at!: string;
  subject!: SheetSubjectDto;
  /** The rule set of the airframe it is on; null when it is on none. */
  ruleSet!: string | null;
  parts!: SheetPartDto[];
  /** What limits first, in words. */
  limiterByCycles!: string | null;
  limiterByDate!: string | null;
  /** What the sheet is, and what it is not. */
  cautions!: string[];
  /** What is filled in by hand: the system signs nothing. */
  toSign!: string[];
}
