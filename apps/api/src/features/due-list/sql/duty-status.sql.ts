import { REQUIREMENT_WINDOWS } from '@strutbook/domain/due/dimension-due.js';
import { LIFE_WINDOWS } from '@strutbook/domain/life/life-status.js';

/** The statuses of what can be told, from the most pressing to the least. */
export const TOLD_STATUSES = ['over', 'in-tolerance', 'soon', 'planned', 'later'] as const;

type Window = 'alert' | 'planning';
type Counted = 'cycles' | 'minutes' | 'days';

const ofLife = (window: Window): string =>
  `CASE ${Object.entries(LIFE_WINDOWS)
    .map(([dimension, windows]) => `${whenIn(dimension as Counted)} THEN ${windows[window]}`)
    .join(' ')} END`;

const ofRequirement = (window: Window): string =>
  `CASE ${Object.entries(REQUIREMENT_WINDOWS.widest)
    .map(
      ([dimension, widest]) =>
        `${whenIn(dimension as Counted)} THEN least(${widest[window]}, ceil(d.span * ${dimension === 'days' ? "CASE d.dimension WHEN 'months' THEN 30 ELSE 1 END" : '1'} / ${REQUIREMENT_WINDOWS.share[window]}::numeric))`,
    )
    .join(' ')} END`;

function whenIn(dimension: Counted): string {
  const names = { cycles: "'cycles', 'flights'", minutes: "'minutes'", days: "'days', 'months'" };
  return `WHEN d.dimension IN (${names[dimension]})`;
}

const within = (window: Window): string =>
  `d.remaining <= CASE WHEN d.requirement_id IS NULL THEN ${ofLife(window)} ELSE ${ofRequirement(window)} END`;

/**
 * The place of one dimension's status among TOLD_STATUSES, of a row `d` with its remaining and latest: the windows are
 * those of the core, written out.
 */
export const STATUS_PLACE = `CASE WHEN d.latest < 0 THEN 0 WHEN d.remaining < 0 THEN 1 WHEN ${within('alert')} THEN 2
    WHEN ${within('planning')} THEN 3 ELSE 4 END`;
