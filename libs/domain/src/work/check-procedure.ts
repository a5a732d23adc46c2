import { COUNTED, type CountCapture } from './capture.js';
import { captureProblems, type ProcedureProblem, problem, twice } from './check-capture.js';
import type { ProcedureContent, StepDefinition } from './step.js';

export type { ProcedureProblem } from './check-capture.js';

/**
 * What keeps a procedure from being worked by: keys used twice, numbers that do not run from 1, groups, steps or
 * items that are not there, a step that waits for a later one, what is opened and never closed after it, ranges
 * that are no range. Empty when it is in order. Total.
 */
export function checkProcedure(content: ProcedureContent): ProcedureProblem[] {
  const { groups, items, steps } = content;
  return [
    ...(steps.length === 0
      ? [problem('NO_STEPS', 'steps', 'The procedure has no step.', 'Add the first step.')]
      : []),
    ...twice('groups', groups),
    ...twice('items', items),
    ...twice('steps', steps),
    ...steps.flatMap((step, index) => [
      ...placeProblems(step, index, content),
      ...twice(`steps[${index}].captures`, step.captures),
      ...step.captures.flatMap((capture, at) => captureProblems(capture, `steps[${index}].captures[${at}]`)),
    ]),
    ...itemProblems(content),
    ...(['removal', 'installation'] as const).flatMap((move) => movedTwice(steps, move)),
    ...COUNTED.flatMap((what) => countedOneWay(steps, what)),
  ];
}

function placeProblems(step: StepDefinition, index: number, content: ProcedureContent): ProcedureProblem[] {
  const at = `steps[${index}]`;
  const number =
    step.number === index + 1
      ? []
      : [
          problem(
            'NUMBER_OUT_OF_LINE',
            `${at}.number`,
            `Step ${step.key} has number ${step.number} in place ${index + 1}.`,
            'Number the steps 1, 2, 3 in their order.',
          ),
        ];
  const group = content.groups.some((each) => each.key === step.group)
    ? []
    : [
        problem(
          'NO_SUCH_GROUP',
          `${at}.group`,
          `There is no group ${step.group}.`,
          'Name a group of this procedure.',
        ),
      ];
  return [...number, ...group, ...waitProblems(step, index, content.steps)];
}

function waitProblems(
  step: StepDefinition,
  index: number,
  steps: readonly StepDefinition[],
): ProcedureProblem[] {
  return step.waitsFor.flatMap((key) => {
    const before = steps.findIndex((each) => each.key === key);
    const field = `steps[${index}].waitsFor`;
    if (before < 0)
      return [problem('NO_SUCH_STEP', field, `There is no step ${key}.`, 'Name a step of this procedure.')];
    if (before < index) return [];
    return [
      problem(
        'WAITS_FOR_LATER',
        field,
        `Step ${step.key} waits for ${key}, which does not come before it.`,
        'Let it wait for earlier steps only, or change the order.',
      ),
    ];
  });
}

function itemProblems({ items, steps }: ProcedureContent): ProcedureProblem[] {
  const unknown = steps.flatMap((step, index) =>
    (['opens', 'closes'] as const).flatMap((which) =>
      step[which]
        .filter((key) => !items.some((item) => item.key === key))
        .map((key) =>
          problem(
            'NO_SUCH_ITEM',
            `steps[${index}].${which}`,
            `There is no item ${key}.`,
            'Name an item of this procedure.',
          ),
        ),
    ),
  );
  const left = items.flatMap(({ key, name }, index) => {
    const opened = steps.findLastIndex((step) => step.opens.includes(key));
    const closed = steps.findLastIndex((step) => step.closes.includes(key));
    if (opened < 0 || opened < closed) return [];
    return [
      problem(
        'OPENED_NOT_CLOSED',
        `items[${index}]`,
        `${name} is opened by step ${opened + 1} and no later step closes it.`,
        'Add the step that closes it.',
      ),
    ];
  });
  return [...unknown, ...left];
}

/** What is counted out alone, or in alone, could never be shown to be all there: its package could not be released. */
function countedOneWay(steps: readonly StepDefinition[], what: CountCapture['what']): ProcedureProblem[] {
  const counted = (direction: CountCapture['direction']) =>
    steps.findIndex(({ captures }) =>
      captures.some((each) => each.kind === 'count' && each.what === what && each.direction === direction),
    );
  const [out, back] = [counted('out'), counted('in')];
  if (out < 0 === back < 0) return [];
  return [
    problem(
      'COUNTED_ONE_WAY',
      `steps[${Math.max(out, back)}].captures`,
      `The ${what} are counted ${out < 0 ? 'in and never out' : 'out and never in'}.`,
      'Count them both ways, or not at all.',
    ),
  ];
}

function movedTwice(steps: readonly StepDefinition[], move: 'removal' | 'installation'): ProcedureProblem[] {
  return steps.flatMap((step, index) =>
    step.moves === move && steps.findIndex((each) => each.moves === move) !== index
      ? [
          problem(
            'MOVED_TWICE',
            `steps[${index}].moves`,
            `An earlier step already makes the ${move}.`,
            'Let one step make it.',
          ),
        ]
      : [],
  );
}
