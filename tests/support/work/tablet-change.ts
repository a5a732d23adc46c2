import type { ProcedureContent, StepDefinition } from '../../../libs/domain/src/work/step.js';
import { smallProcedure } from './small-procedure.js';

const TOOLS_OUT = {
  kind: 'count',
  key: 'tools-out',
  label: 'Tools taken out',
  what: 'tools',
  direction: 'out',
};
const TOOLS_IN = { kind: 'count', key: 'tools-in', label: 'Tools back', what: 'tools', direction: 'in' };

function changed(step: StepDefinition): StepDefinition {
  if (step.key === 'make-safe') return { ...step, captures: [...step.captures, TOOLS_OUT as never] };
  if (step.key === 'close-cowl') return { ...step, captures: [...step.captures, TOOLS_IN as never] };
  return step.key === 'rejoin-fuel' ? { ...step, inspection: 'independent' } : step;
}

/** The small procedure as it is worked at a tablet: tools are counted too, and the fuel line is a hold point. */
export function tabletChange(): ProcedureContent {
  const { steps, ...rest } = smallProcedure();
  return { ...rest, steps: steps.map(changed) };
}

/** The titles of its steps, in their order. */
export const CHANGE_TITLES: readonly string[] = smallProcedure().steps.map(({ title }) => title);
