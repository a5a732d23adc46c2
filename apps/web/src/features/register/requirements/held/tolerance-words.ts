import { type Dimension, dueIn } from '../../../../format/due-words.js';
import type { RequirementStatus } from '../../../../server/requirements.js';
import type { DimensionStatus } from '../requirement-queries.js';

interface At {
  readonly dimension: Dimension;
  readonly at: number | null;
  readonly on: string | null;
}

const atText = ({ dimension, at, on }: At): string => dueIn({ dimension, dueAt: at, dueOn: on });

const differs = ({ dueAt, dueOn }: DimensionStatus, at: number | null, on: string | null): boolean =>
  dueOn === null ? at !== null && at !== dueAt : on !== null && on !== dueOn;

// A due in half cycles is told rounded down and its earliest rounded up: with no window that is no difference.
const isEarlier = ({ dueAt, dueOn, earliestAt, earliestOn }: DimensionStatus): boolean =>
  dueOn === null
    ? earliestAt !== null && dueAt !== null && earliestAt < dueAt
    : earliestOn !== null && earliestOn < dueOn;

/** 'From 9,900:00 h to 10,600:00 h, varied to 11,000:00 h'; null where nothing is granted. */
export function toleranceText(due: DimensionStatus): string | null {
  const { dimension, earliestAt, earliestOn, latestAt, latestOn, variableAt, variableOn } = due;
  const parts = [
    ...(isEarlier(due)
      ? [`from ${atText({ dimension, at: earliestAt, on: earliestOn }).replace(/^At /, '')}`]
      : []),
    ...(differs(due, latestAt, latestOn)
      ? [`to ${atText({ dimension, at: latestAt, on: latestOn }).replace(/^At /, '')}`]
      : []),
    ...(differs(due, variableAt, variableOn)
      ? [`variable to ${atText({ dimension, at: variableAt, on: variableOn }).replace(/^At /, '')}`]
      : []),
  ];
  const text = parts.join(', ');
  return text === '' ? null : `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** Whether an approval may vary anything of what is due now. */
export const isVariable = ({ dues }: RequirementStatus): boolean =>
  dues.some((due) => differs(due, due.variableAt, due.variableOn));

/** How far an approval may go, in a sentence. */
export function variableText({ dues }: RequirementStatus): string {
  const told = dues
    .filter((due) => differs(due, due.variableAt, due.variableOn))
    .map(({ dimension, variableAt, variableOn }) =>
      atText({ dimension, at: variableAt, on: variableOn }).replace(/^At /, ''),
    );
  return told.length === 0
    ? 'The requirement permits no variation.'
    : `The requirement permits it to ${told.join(', ')}.`;
}
