import type { NewRequirementDto } from './requirement.dto.js';

/** A new requirement as its row and its journal entry keep it, days as text. Total. */
export function requirementRow(asked: NewRequirementDto) {
  const { code, title, kind, document, revision, anchor, threshold, repeat } = asked;
  return {
    code,
    title,
    kind,
    document,
    revision,
    anchor,
    airframeTypeId: asked.airframeTypeId ?? null,
    positionNumber: asked.positionNumber ?? null,
    engineModelId: asked.engineModelId ?? null,
    partNumber: asked.partNumber ?? null,
    thresholdMinutes: threshold?.minutes ?? null,
    thresholdCycles: threshold?.cycles ?? null,
    thresholdDays: threshold?.days ?? null,
    thresholdMonths: threshold?.months ?? null,
    repeatMinutes: repeat?.minutes ?? null,
    repeatCycles: repeat?.cycles ?? null,
    repeatDays: repeat?.days ?? null,
    repeatMonths: repeat?.months ?? null,
    combine: asked.combine ?? 'first',
    monthRule: asked.monthRule ?? 'same-day',
    countedFrom: asked.countedFrom,
    fromOn: asked.fromOn ?? null,
    effectiveOn: asked.effectiveOn,
  };
}
