import { parseDate, parseMoment } from '../../../format/utc-moment.js';
import { wireMinute } from '../../../format/when.js';
import type { Faults } from '../../../ui/fields/act-form.js';
import type { BoundaryWords } from '../register-acts.js';

/** When something came to a place, as typed: old records often have a log page or a date and no minute. */
export interface TypedBoundary {
  readonly kind: BoundaryWords['kind'];
  readonly at: string;
  readonly page: string;
  readonly on: string;
  /** Whose log page or day, where the place does not tell. */
  readonly airframeId: string;
}

export const BLANK_BOUNDARY: TypedBoundary = { kind: 'instant', at: '', page: '', on: '', airframeId: '' };

export const BOUNDARY_KINDS = [
  { value: 'instant', label: 'At an instant' },
  { value: 'after-page', label: 'After a log page' },
  { value: 'before-first', label: 'Before the first flight of a date' },
  { value: 'after-last', label: 'After the last flight of a date' },
] as const;

/** What is plainly wrong with it, by the server's field names. */
export function faultsOfBoundary({ kind, at, page, on }: TypedBoundary): Faults {
  if (kind === 'instant') {
    const moment = parseMoment(at);
    return moment.ok ? {} : { at: moment.reason };
  }
  if (kind === 'after-page') return page.trim() === '' ? { page: 'Enter the number of the log page' } : {};
  const date = parseDate(on);
  return date.ok ? {} : { on: date.reason };
}

/** As it is sent. */
export function boundaryWords({ kind, at, page, on, airframeId }: TypedBoundary): BoundaryWords {
  if (kind === 'instant') {
    const moment = parseMoment(at);
    return moment.ok ? { kind, at: wireMinute(moment.instant) } : { kind };
  }
  const whose = airframeId === '' ? {} : { airframeId };
  return kind === 'after-page' ? { kind, page: page.trim(), ...whose } : { kind, on: on.trim(), ...whose };
}
