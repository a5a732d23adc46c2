import { REBASE } from '@strutbook/domain/due/rebase.js';
import { DIMENSIONS, type Interval } from '@strutbook/domain/due/requirement.js';
import type { StoredGrants, StoredRule } from '../../../records/requirements/rule/stored-rule.js';
import type { IntervalDto, NewRequirementDto } from '../requirement.dto.js';
import type { GrantsDto } from './granted.dto.js';

/** A new requirement as its row and its journal entry keep it, days as text. Total. */
export function requirementRow(asked: NewRequirementDto) {
  const { code, title, kind, document, revision, anchor } = asked;
  return {
    code,
    title,
    kind,
    document,
    revision,
    anchor,
    ...scopeOf(asked),
    ...thresholdOf(asked),
    ...repeatOf(asked),
    combine: asked.combine ?? 'first',
    monthRule: asked.monthRule ?? 'same-day',
    countedFrom: asked.countedFrom,
    fromOn: asked.fromOn ?? null,
    effectiveOn: asked.effectiveOn,
    rule: ruleToStore(asked),
    grantedBy: asked.grantedBy ?? null,
    credit: asked.credit ?? 'revisions',
    mandatory: asked.mandatory ?? false,
  };
}

function scopeOf(asked: NewRequirementDto) {
  return {
    airframeTypeId: asked.airframeTypeId ?? null,
    positionNumber: asked.positionNumber ?? null,
    engineModelId: asked.engineModelId ?? null,
    partNumber: asked.partNumber ?? null,
    serialFrom: asked.serialFrom ?? null,
    serialTo: asked.serialTo ?? null,
    onlyWith: asked.onlyWith ?? [],
    unlessWith: asked.unlessWith ?? [],
    supersedesId: asked.supersedesId ?? null,
    terminatesId: asked.terminatesId ?? null,
  };
}

function thresholdOf({ threshold }: NewRequirementDto) {
  return {
    thresholdMinutes: threshold?.minutes ?? null,
    thresholdCycles: threshold?.cycles ?? null,
    thresholdDays: threshold?.days ?? null,
    thresholdMonths: threshold?.months ?? null,
    thresholdEvent: threshold?.event ?? null,
  };
}

function repeatOf({ repeat }: NewRequirementDto) {
  return {
    repeatMinutes: repeat?.minutes ?? null,
    repeatCycles: repeat?.cycles ?? null,
    repeatDays: repeat?.days ?? null,
    repeatMonths: repeat?.months ?? null,
    repeatEvent: repeat?.event ?? null,
  };
}

/** What its column `rule` keeps: nothing of what was not said. */
function ruleToStore({ threshold, repeat, window, variation, rebase }: NewRequirementDto): StoredRule {
  const bounds = {
    threshold: boundOf(threshold?.notToExceed),
    repeat: boundOf(repeat?.notToExceed),
  };
  const [early, late] = [grantsOf(window?.early), grantsOf(window?.late)];
  const varied = grantsOf(variation);
  const isGranted = (grants: StoredGrants) => Object.keys(grants).length > 0;
  return {
    ...(bounds.threshold === null && bounds.repeat === null ? {} : { bounds }),
    ...(isGranted(early) || isGranted(late) ? { window: { early, late } } : {}),
    ...(isGranted(varied) ? { variation: varied } : {}),
    ...(rebase == null
      ? {}
      : {
          rebase: {
            early: rebase.early ?? REBASE.early,
            within: rebase.within ?? REBASE.within,
            varied: rebase.varied ?? REBASE.varied,
            beyond: rebase.beyond ?? REBASE.beyond,
          },
        }),
  };
}

function boundOf(asked: IntervalDto | null | undefined): Interval | null {
  if (asked == null) return null;
  const { minutes = null, cycles = null, days = null, months = null } = asked;
  return { minutes, cycles, days, months };
}

/** Grants with every tier whole, and no dimension that grants nothing. Total. */
export function grantsOf(asked: GrantsDto | null | undefined): StoredGrants {
  return Object.fromEntries(
    DIMENSIONS.flatMap((dimension) => {
      const tiers = asked?.[dimension] ?? [];
      const whole = tiers.map(({ upTo = null, percent = null, atMost = null, atMostDays = null }) => ({
        ...{ upTo, percent, atMost, atMostDays },
      }));
      return whole.length === 0 ? [] : [[dimension, whole]];
    }),
  );
}
