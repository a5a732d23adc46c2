import type { Objection } from '../release/objection.js';
import { isPreservationOver } from '../serviceability/unfit.js';
import { dateOf } from '../units/calendar.js';
import type { Instant } from '../units/minutes.js';
import type { ChangeFacts, ChangingComponent } from './change.js';

/**
 * What is held against fitting this component there, its lives apart: a model not authorised at the
 * position, an unserviceable component, one whose serviceability nobody recorded, or a preservation that ran out. Total.
 */
export function objectionsToFitting(
  component: ChangingComponent,
  { slot }: Pick<ChangeFacts, 'slot'>,
  at: Instant,
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
  const { unfit = null, preservedUntil = null } = component;
  if (component.serviceable === false || unfit !== null)
    objections.push({
      code: 'PART_UNSERVICEABLE',
      severity: 'blocking',
      ...about,
      detail: unfit === null ? detail : { ...detail, ...unfit },
    });
  if (component.serviceable === null)
    objections.push({ code: 'PART_SERVICEABILITY_UNKNOWN', severity: 'advisory', ...about, detail });
  if (preservedUntil !== null && isPreservationOver(preservedUntil, dateOf(at)))
    objections.push({
      code: 'PRESERVATION_OVER',
      severity: 'advisory',
      ...about,
      detail: { ...detail, goodUntil: preservedUntil },
    });
  return objections;
}
