import type { KeyboardEvent } from 'react';

const ROW = '[data-step-row]';
const LANE = '[data-lane]';

const inSight = (element: HTMLElement): boolean => element.offsetParent !== null;

const rowsIn = (element: Element): HTMLElement[] =>
  [...element.querySelectorAll<HTMLElement>(ROW)].filter(inSight);

function beside(row: HTMLElement, step: 1 | -1): HTMLElement | undefined {
  const lane = row.closest(LANE);
  if (lane === null) return undefined;
  const rows = rowsIn(lane);
  return rows[rows.indexOf(row) + step];
}

/** The row of the next lane that stands nearest in height. */
function across(list: Element, row: HTMLElement, step: 1 | -1): HTMLElement | undefined {
  const lanes = [...list.querySelectorAll<HTMLElement>(LANE)].filter(inSight);
  const lane = lanes[lanes.findIndex((each) => each.contains(row)) + step];
  if (lane === undefined) return undefined;
  const top = row.getBoundingClientRect().top;
  const far = (each: HTMLElement) => Math.abs(each.getBoundingClientRect().top - top);
  return rowsIn(lane).toSorted((a, b) => far(a) - far(b))[0];
}

function target(list: Element, row: HTMLElement, key: string): HTMLElement | undefined {
  if (key === 'ArrowDown') return beside(row, 1);
  if (key === 'ArrowUp') return beside(row, -1);
  if (key === 'ArrowRight') return across(list, row, 1);
  return key === 'ArrowLeft' ? across(list, row, -1) : undefined;
}

export interface StepKeys {
  /** R: to the step's first field. */
  readonly onReading: (stepId: string) => void;
  /** S: to its signature. */
  readonly onSign: (stepId: string) => void;
}

/**
 * Keys of the list, heard only while one of its rows has the focus: arrows move, R goes to the reading, S to the
 * signature. Source: WCAG 2.2, 2.1.4, for single letters.
 */
export function listenToKeys(event: KeyboardEvent<HTMLElement>, { onReading, onSign }: StepKeys): void {
  const row = event.target instanceof Element ? event.target.closest<HTMLElement>(ROW) : null;
  if (row === null || event.ctrlKey || event.metaKey || event.altKey) return;
  const stepId = row.dataset['stepRow'] ?? '';
  const next = target(event.currentTarget, row, event.key);
  if (next !== undefined) next.focus();
  else if (event.key.toLowerCase() === 'r') onReading(stepId);
  else if (event.key.toLowerCase() === 's') onSign(stepId);
  else return;
  event.preventDefault();
}
