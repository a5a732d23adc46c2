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
  | 'MIXED_MODELS'
  | 'STEP_UNSIGNED'
  | 'LOG_GAP';

/** A blocking objection forbids the release; an advisory one is told with it. */
export type Severity = 'blocking' | 'advisory';

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
  readonly record: {
    readonly kind: 'position' | 'component' | 'slot' | 'flight' | 'step' | 'airframe';
    readonly id: string;
  };
  /** Words and figures for the sentence: serial numbers, slot names, pages, cycles. */
  readonly detail: Readonly<Record<string, string | number | null>>;
}
