/** Something kept that is not what the facts say. */
export interface Difference {
  readonly what: string;
  readonly id: string;
  readonly kept: string;
  readonly fromFacts: string;
}

/** What a check looked at and what it found. */
export interface Verdict {
  readonly name: string;
  readonly looked: number;
  readonly differences: readonly Difference[];
}
