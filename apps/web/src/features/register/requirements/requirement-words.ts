import type { RequirementStatus } from '../../../server/requirements.js';
import type { Requirement } from './requirement-queries.js';

export const KINDS = [
  { value: 'inspection', label: 'Inspection' },
  { value: 'overhaul', label: 'Overhaul' },
  { value: 'directive', label: 'Directive' },
  { value: 'bulletin', label: 'Bulletin' },
  { value: 'discard', label: 'Discard' },
  { value: 'check', label: 'Check' },
  { value: 'airworthiness-limitation', label: 'Airworthiness limitation' },
] as const;

export const ANCHORS = [
  { value: 'airframe', label: 'The airframe' },
  { value: 'position', label: 'What hangs at a position' },
  { value: 'engine', label: 'An engine' },
  { value: 'part', label: 'A part' },
] as const;

export const COUNTED = [
  { value: 'new', label: 'New' },
  { value: 'overhaul', label: 'Overhaul' },
  { value: 'installation', label: 'Installation' },
  { value: 'shop-visit', label: 'Shop visit' },
  { value: 'accomplishment', label: 'The last time it was met' },
  { value: 'effective', label: 'The day it becomes effective' },
  { value: 'date', label: 'A date' },
] as const;

/** What may be counted from, by what is followed. */
export const COUNTED_FOR: Readonly<Record<Requirement['anchor'], readonly Requirement['countedFrom'][]>> = {
  airframe: ['new', 'accomplishment', 'effective', 'date'],
  position: ['new', 'installation', 'accomplishment', 'effective', 'date'],
  engine: ['new', 'overhaul', 'shop-visit', 'installation', 'accomplishment', 'effective', 'date'],
  part: ['new', 'overhaul', 'shop-visit', 'installation', 'accomplishment', 'effective', 'date'],
};

export const kindWord = (kind: string): string => KINDS.find(({ value }) => value === kind)?.label ?? kind;

/** 'Engines of Karneth Turbines K84', 'Position 2 on every airframe'. */
export function scopeText(requirement: Requirement): string {
  const { anchor, airframeType, positionNumber, engineModel, partNumber } = requirement;
  const type = airframeType === null ? 'every airframe' : airframeType;
  switch (anchor) {
    case 'airframe':
      return airframeType === null ? 'Every airframe' : `Airframes of type ${airframeType}`;
    case 'position':
      if (positionNumber === null) return `Every engine position on ${type}`;
      return `${positionNumber === 0 ? 'The APU' : `Position ${positionNumber}`} on ${type}`;
    case 'engine':
      return engineModel === null ? 'Every engine' : `Engines of model ${engineModel}`;
    case 'part':
      return `Parts ${partNumber ?? ''}`;
  }
}

/** Where to read about what a requirement is held against; null for a position. */
export function subjectHref({ componentId, airframeId }: RequirementStatus): string | null {
  if (componentId !== null) return `/components/${componentId}`;
  return airframeId === null ? null : `/positions/${airframeId}`;
}
