import type { Objection } from '../release/objection.js';
import type { ChangeFacts, ChangingComponent } from './change.js';

/**
 * What is held against fitting this component there, its lives apart: a model not authorised at the
 * position, an unserviceable component, or one whose serviceability nobody recorded. Total.
 */
export function objectionsToFitting(
  component: ChangingComponent,
  { slot }: Pick<ChangeFacts, 'slot'>,
): readonly Objection[] {
  const about = {
    positionNumber: slot.positionNumber,
    record: { kind: 'component', id: component.id },
  } as const;
  const detail = { serial: component.serial, model: component.modelId };
  const objections: Objection[] = [];
  const authorised = slot.authorisedModelIds;
  if (authorised !== null && (component.modelId === null || !authorised.includes(component.modelId)))
    objections.push({ code: 'ENGINE_NOT_AUTHORISED', severity: 'blocking', ...about, detail });
  if (component.serviceable === false)
    objections.push({ code: 'PART_UNSERVICEABLE', severity: 'blocking', ...about, detail });
  if (component.serviceable === null)
    objections.push({ code: 'PART_SERVICEABILITY_UNKNOWN', severity: 'advisory', ...about, detail });
  return objections;
}
