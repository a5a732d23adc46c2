import type { StepDefinition } from '@strutbook/domain/work/step.js';
import type { FieldRefusal } from '../../platform/problems/api-refusals.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import type { ResolvedOrder } from '../../records/work/resolve-order.js';
import type { NewPackageDto } from './new-package.dto.js';

/** Refuses INVALID_FIELDS for a package on nothing or on two things, without its order, or with nothing to do. */
export function refuseShape(asked: NewPackageDto): void {
  const fault = faultOfSubject(asked) ?? faultOfWork(asked);
  if (fault !== null) refuse({ code: 'INVALID_FIELDS', fields: [fault] });
}

const atPosition = (kind: string): boolean => kind === 'engine-change' || kind === 'pod-swap';

function faultOfSubject({ kind, airframeId, componentId, ruleSet }: NewPackageDto): FieldRefusal | null {
  if (airframeId !== undefined && componentId !== undefined)
    return {
      field: 'componentId',
      reason: 'A package is on one airframe or of one component, not both.',
      fix: 'Leave one of the two out.',
    };
  if (airframeId === undefined && componentId === undefined)
    return {
      field: 'airframeId',
      reason: 'It is not told what the package is on.',
      fix: 'Choose an airframe or a component.',
    };
  if (componentId !== undefined && atPosition(kind))
    return {
      field: 'airframeId',
      reason: 'An engine change or a pod swap is made on an airframe.',
      fix: 'Choose the airframe, or another kind of package.',
    };
  if (airframeId !== undefined && ruleSet !== undefined)
    return {
      field: 'ruleSet',
      reason: 'A package on an airframe is released under the rule set of the airframe.',
      fix: 'Leave it out.',
    };
  return null;
}

function faultOfWork({ kind, order, procedureId, steps = [] }: NewPackageDto): FieldRefusal | null {
  const changes = atPosition(kind) || kind === 'component-change';
  if (order === undefined && changes)
    return {
      field: 'order',
      reason: 'It is not told what is changed.',
      fix: 'Name the place, what comes off and what goes on.',
    };
  if (order !== undefined && kind === 'inspection')
    return {
      field: 'order',
      reason: 'An inspection changes nothing.',
      fix: 'Leave the order out, or open a component change.',
    };
  if (order === undefined && procedureId === undefined && steps.length === 0)
    return {
      field: 'steps',
      reason: 'There is nothing to do in this package.',
      fix: 'Choose a procedure, or add a step.',
    };
  return null;
}

const MOVES = [
  { move: 'removal', which: 'outgoing', words: 'take something off', names: 'nothing that comes off' },
  { move: 'installation', which: 'incoming', words: 'put something on', names: 'nothing that goes on' },
] as const;

/** Refuses REFUSED_BY_FACTS, about `field`, unless what is ordered is made by exactly one step, and nothing else is. */
export function refuseMovesUnlikeOrder(
  definitions: readonly StepDefinition[],
  order: ResolvedOrder | null,
  field: string,
): void {
  for (const { move, which, words, names } of MOVES) {
    const made = definitions.filter((step) => step.moves === move).length;
    const ordered = order?.[which] ?? null;
    if (made === (ordered === null ? 0 : 1)) continue;
    const reason =
      ordered === null
        ? `The steps ${words}, and the order names ${names}.`
        : `${made === 0 ? 'No step' : 'More than one step'} makes the ${move} of ${ordered.serialNumber}.`;
    refuse({
      code: 'REFUSED_BY_FACTS',
      field,
      reason,
      fix: 'Choose a procedure that fits the order, or correct the order.',
    });
  }
}
