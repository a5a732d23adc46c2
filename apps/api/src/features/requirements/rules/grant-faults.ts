import { DIMENSIONS } from '@strutbook/domain/due/requirement.js';
import type { FieldRefusal } from '../../../platform/problems/api-refusals.js';
import type { NewRequirementDto } from '../requirement.dto.js';
import type { GrantsDto, TierDto } from './granted.dto.js';
import { grantsOf } from './requirement-row.js';

/** What is wrong with its window and its permitted variation. Total. */
export function grantFaults(asked: NewRequirementDto): FieldRefusal[] {
  const { kind, window, variation, grantedBy } = asked;
  const all = [
    { field: 'window.early', grants: window?.early },
    { field: 'window.late', grants: window?.late },
    { field: 'variation', grants: variation },
  ];
  const given = all.filter(({ grants }) => Object.keys(grantsOf(grants)).length > 0);
  const tiers = given.flatMap(({ field, grants }) => tierFaults(field, grants ?? {}));
  const isByTextAlone = kind === 'directive' || kind === 'airworthiness-limitation';
  if (!isByTextAlone || given.length === 0 || grantedBy != null) return tiers;
  return [
    ...tiers,
    {
      field: 'grantedBy',
      reason: `${kind === 'directive' ? 'A directive' : 'An airworthiness limitation'} has only the tolerance its own text grants.`,
      fix: 'Enter the paragraph that grants it, or leave the window and the variation out.',
    },
  ];
}

function tierFaults(field: string, grants: GrantsDto): FieldRefusal[] {
  return DIMENSIONS.flatMap((dimension) => {
    const tiers = grants[dimension] ?? [];
    return tiers.flatMap((tier, index) => {
      const fault = faultOf(tier, tiers[index - 1], dimension);
      return fault === null ? [] : [{ field: `${field}.${dimension}[${index}].${fault.of}`, ...fault.told }];
    });
  });
}

function faultOf(tier: TierDto, before: TierDto | undefined, dimension: string) {
  const { upTo, percent, atMost, atMostDays } = tier;
  if (percent == null && atMost == null && atMostDays == null)
    return {
      of: 'percent',
      told: { reason: 'It grants nothing.', fix: 'Enter a share, the most that is granted, or both.' },
    };
  if (atMostDays != null && dimension !== 'months')
    return {
      of: 'atMostDays',
      told: { reason: 'Days are granted of months alone.', fix: 'Enter the most as atMost.' },
    };
  if (before !== undefined && (before.upTo == null || (upTo != null && upTo <= before.upTo)))
    return {
      of: 'upTo',
      told: {
        reason: 'Tiers go from the shortest interval to the longest, and one without an end is the last.',
        fix: 'Order them by their longest interval.',
      },
    };
  return null;
}
