import type { Standing, Step } from '../work/work-shapes.js';

const WORST_FIRST: readonly Standing[] = ['rejected', 'changed', 'to-inspect', 'open', 'blocked'];

/** How a group stands: signed when all of it is, else the first thing that somebody can act on. */
export function groupStanding(steps: readonly Step[]): Standing {
  return WORST_FIRST.find((standing) => steps.some((step) => step.standing === standing)) ?? 'signed';
}

/** 'Waits for 12: inspection' */
export function waitingWords({ number, code }: Step['blockers'][number]): string {
  return `${number}${code === 'INSPECTION_MISSING' ? ': inspection' : ''}`;
}
