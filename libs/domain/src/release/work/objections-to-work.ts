import type { Objection } from '../objection.js';
import type { WorkSnapshot } from '../work-snapshot.js';
import { objectionsToCounts, objectionsToItems } from './objections-to-accounts.js';
import { objectionsToEntries } from './objections-to-entries.js';
import { objectionsToOrder } from './objections-to-order.js';
import { objectionsToSigners } from './objections-to-signers.js';
import { objectionsToStep } from './objections-to-step.js';

/** What the objections to work need beside it. */
export interface WorkRules {
  readonly packageId: string;
  /** Whether the rule set lets one person inspect their own work, where the case is recorded. */
  readonly onePersonReinspection: boolean;
}

/** What is held against the work of a package by steps. Total. */
export function objectionsToWork(work: WorkSnapshot, rules: WorkRules): readonly Objection[] {
  return [
    ...work.orders.flatMap((order) => objectionsToOrder(order, rules)),
    ...work.steps.flatMap((step) => [
      ...objectionsToEntries(step, work),
      ...objectionsToStep(step, rules.onePersonReinspection),
    ]),
    ...objectionsToItems(work),
    ...objectionsToCounts(work, rules.packageId),
    ...objectionsToSigners(work),
  ];
}
