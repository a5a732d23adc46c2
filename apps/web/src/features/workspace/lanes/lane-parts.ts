import type { StepGroup } from '@strutbook/domain/work/step.js';
import type { Step, Work } from '../work/work-shapes.js';

export interface Group extends StepGroup {
  readonly steps: readonly Step[];
}

export type LaneName = 'before' | 'out' | 'in' | 'after';

export interface Lane {
  readonly name: LaneName;
  readonly groups: readonly Group[];
}

const ORDER: readonly LaneName[] = ['before', 'out', 'in', 'after'];

function laneOf(groups: readonly Group[], place: number): LaneName {
  const { lane } = groups[place] ?? { lane: 'both' };
  if (lane !== 'both') return lane;
  const firstOfLane = groups.findIndex((group) => group.lane !== 'both');
  return place < firstOfLane ? 'before' : 'after';
}

/** Whether the work has the two lanes of a change. */
export const hasLanes = ({ groups }: Pick<Work, 'groups'>): boolean =>
  groups.some(({ lane }) => lane !== 'both');

/** The groups with their steps, in the order of the procedure; a group without steps is left out. */
export function groupsOf({ groups, steps }: Pick<Work, 'groups' | 'steps'>): Group[] {
  const known = new Set(groups.map(({ key }) => key));
  const own = steps.filter(({ definition }) => !known.has(definition.group));
  const extra: Group[] =
    own.length === 0
      ? []
      : [{ key: '', letter: '+', title: 'Added steps', lane: 'both', place: 'ground', steps: own }];
  return [
    ...groups.map((group) => ({
      ...group,
      steps: steps.filter(({ definition }) => definition.group === group.key),
    })),
    ...extra,
  ].filter((group) => group.steps.length > 0);
}

/** Out and in beside each other, what comes before both, and what comes after. Empty lanes are left out. */
export function lanesOf(work: Pick<Work, 'groups' | 'steps'>): Lane[] {
  const groups = groupsOf(work);
  return ORDER.map((name) => ({
    name,
    groups: groups.filter((_, place) => laneOf(groups, place) === name),
  })).filter((lane) => lane.groups.length > 0);
}

/** 'x of y signed' */
export const signedOf = (groups: readonly Group[]): { readonly signed: number; readonly total: number } => {
  const steps = groups.flatMap((group) => group.steps);
  return { signed: steps.filter(({ standing }) => standing === 'signed').length, total: steps.length };
};

/** The step that an address names: by its id, its key or its number. */
export function stepNamed(steps: readonly Step[], name: string | undefined): Step | null {
  if (name === undefined) return null;
  const is = ({ id, definition }: Step) =>
    id === name || definition.key === name || String(definition.number) === name;
  return steps.find(is) ?? null;
}
