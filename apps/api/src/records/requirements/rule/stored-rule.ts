import type { Rebase } from '@strutbook/domain/due/rebase.js';
import type { Dimension, Interval, Phases } from '@strutbook/domain/due/requirement.js';
import type { Grants, Tier } from '@strutbook/domain/due/tolerance.js';

/** What the column `rule` of a requirement keeps: what was checked when it was recorded. A key left out grants nothing. */
export interface StoredRule {
  readonly bounds?: Phases<Interval>;
  readonly window?: { readonly early: StoredGrants; readonly late: StoredGrants };
  readonly variation?: StoredGrants;
  readonly rebase?: Rebase;
}

/** Tiers in each dimension that is granted. */
export type StoredGrants = Readonly<Partial<Record<Dimension, readonly Tier[]>>>;

/** The rule a row keeps, as what the core takes. The writer checked it. Total. */
export function storedRule(rule: unknown): StoredRule {
  return rule as StoredRule;
}

/** Whether it grants something anywhere. Total. */
export function grantsAnything(grants: Grants | undefined): boolean {
  return Object.values(grants ?? {}).some((tiers) => tiers.length > 0);
}
