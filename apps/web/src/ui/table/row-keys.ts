import type { KeyboardEvent } from 'react';

const CONTROLS = 'a[href], button, input, select';

const controlsOf = (row: Element): HTMLElement[] => Array.from(row.querySelectorAll<HTMLElement>(CONTROLS));

function targetRow(key: string, row: Element, rows: readonly Element[]): Element | undefined {
  const at = rows.indexOf(row);
  switch (key) {
    case 'ArrowDown':
      return rows[at + 1];
    case 'ArrowUp':
      return rows[at - 1];
    case 'Home':
      return rows[0];
    case 'End':
      return rows.at(-1);
    default:
      return undefined;
  }
}

/**
 * Arrow keys go from a row's link or button to the same one in the next row; Home and End to the
 * first and last. Text fields keep these keys for themselves.
 */
export function moveBetweenRows(event: KeyboardEvent<HTMLTableSectionElement>): void {
  const from = event.target;
  if (!(from instanceof HTMLElement) || from instanceof HTMLInputElement || from instanceof HTMLSelectElement)
    return;
  const row = from.closest('tr');
  if (row === null || event.altKey || event.metaKey || event.ctrlKey) return;
  const rows = Array.from(event.currentTarget.rows).filter((entry) => controlsOf(entry).length > 0);
  const target = targetRow(event.key, row, rows);
  if (target === undefined) return;
  const controls = controlsOf(target);
  const place = Math.max(0, controlsOf(row).indexOf(from));
  const control = controls[Math.min(place, controls.length - 1)];
  if (control === undefined) return;
  event.preventDefault();
  control.focus();
}
