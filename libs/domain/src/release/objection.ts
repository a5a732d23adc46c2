/** What an objection says is wrong. */
export type ObjectionCode =
  | 'ENGINE_MISSING'
  | 'ENGINE_NOT_AUTHORISED'
  | 'RATING_UNKNOWN'
  | 'COUNTERS_UNKNOWN'
  | 'LIMITED_PART_MISSING'
  | 'LIMITED_PART_UNTRACED'
  | 'NOT_AUTHORISED'
  | 'NO_LIMIT_RECORDED'
  | 'OVER_LIMIT'
  | 'AT_LIMIT'
  | 'SHORT_OF_PLANNED_STAY'
  | 'WORST_CASE_ACCEPTED'
  | 'PART_UNSERVICEABLE'
  | 'PART_SERVICEABILITY_UNKNOWN'
  | 'PRESERVATION_OVER'
  | 'DISPOSITION_MISSING'
  | 'SHOP_PAPERS_MISSING'
  | 'MIXED_MODELS'
  | 'REQUIREMENT_OVER'
  | 'REQUIREMENT_NOT_VERIFIED'
  | 'DUE_WITHIN_PLANNED_FLYING'
  | 'REQUIREMENT_IN_TOLERANCE'
  | 'LOG_GAP'
  | 'LOG_GAP_EXPLAINED'
  | WorkObjectionCode;

/** What is held against the work itself: its steps, what was captured in them, and who signed. */
export type WorkObjectionCode =
  | 'STEP_UNSIGNED'
  | 'CAPTURE_MISSING'
  | 'INSPECTION_MISSING'
  | 'INSPECTION_BY_SAME_PERSON'
  | 'ONE_PERSON_REINSPECTION'
  | 'TORQUE_OUT_OF_RANGE'
  | 'TOOL_NOT_USABLE'
  | 'LEAK_CHECK_INCOMPLETE'
  | 'LEAK_FOUND'
  | 'PAPERS_REJECTED'
  | 'ENTRY_REJECTED'
  | 'ITEM_OPEN'
  | 'COUNTS_DIFFER'
  | 'ORDER_NOT_MADE'
  | 'ORDER_DIFFERS'
  | 'SIGNER_NOT_AUTHORISED'
  | 'RELEASER_NOT_AUTHORISED'
  | 'RELEASER_WITHOUT_LICENCE';

/** A blocking objection forbids the release; an advisory one is told with it. */
export type Severity = 'blocking' | 'advisory';

/** The kinds of record something can be held against. */
export type ObjectionRecordKind =
  | 'position'
  | 'component'
  | 'slot'
  | 'flight'
  | 'step'
  | 'airframe'
  | 'package'
  | 'tool'
  | 'person'
  | 'requirement';

/**
 * What is held against releasing, or against a fact: code, severity, the record it is about, and what the
 * sentence needs. Ordinary data, never an error.
 */
export interface Objection {
  readonly code: ObjectionCode;
  readonly severity: Severity;
  /** The position it is about; null when it is about the whole airframe. */
  readonly positionNumber: number | null;
  /** The record that is held against it. */
  readonly record: { readonly kind: ObjectionRecordKind; readonly id: string };
  /** Words and figures for the sentence: serial numbers, slot names, pages, cycles. */
  readonly detail: Readonly<Record<string, string | number | null>>;
}
