import { calendarDate } from '../../../format/utc-date.js';
import type { Status } from '../../../ui/status/statuses.js';
import type { Authorisation, Scope } from './authorisation-data.js';

export const SCOPES = [
  { value: 'work', label: 'Work', roles: ['technician', 'inspector', 'certifying-staff'] },
  { value: 'inspection', label: 'Inspections', roles: ['inspector', 'certifying-staff'] },
  { value: 'release', label: 'Releases', roles: ['certifying-staff'] },
] as const satisfies readonly {
  readonly value: Scope;
  readonly label: string;
  /** The roles that sign it; an authorisation alone is not enough. */
  readonly roles: readonly string[];
}[];

export const scopeWord = (scope: Scope): string =>
  SCOPES.find(({ value }) => value === scope)?.label ?? scope;

/** Work before inspections before releases. */
export const scopeRank = (scope: Scope): number => SCOPES.findIndex(({ value }) => value === scope);

/** Whether the roles sign this at all. */
export const signsWith = (scope: Scope, roles: readonly string[]): boolean =>
  SCOPES.some((entry) => entry.value === scope && entry.roles.some((role) => roles.includes(role)));

const LOOKS: Readonly<Record<Authorisation['standing'], { readonly status: Status; readonly word: string }>> =
  {
    'in-force': { status: 'in-limits', word: 'In force' },
    'ends-soon': { status: 'soon', word: 'Ends soon' },
    'to-come': { status: 'plan', word: 'To come' },
    ended: { status: 'closed', word: 'Ended' },
    voided: { status: 'closed', word: 'Voided' },
  };

/** How an authorisation stands today: shape and word. */
export const lookOf = ({ standing }: Pick<Authorisation, 'standing'>) => LOOKS[standing];

/** Whether it lets the person sign today. */
export const counts = ({ standing }: Pick<Authorisation, 'standing'>): boolean =>
  standing === 'in-force' || standing === 'ends-soon';

/** Whether it may still be ended. */
export const isLive = (entry: Pick<Authorisation, 'standing'>): boolean =>
  counts(entry) || entry.standing === 'to-come';

export const typeText = ({ airframeType }: Pick<Authorisation, 'airframeType'>): string =>
  airframeType ?? 'All types';

export const untilText = ({ toOn }: Pick<Authorisation, 'toOn'>): string =>
  toOn === null ? 'No end set' : calendarDate(toOn);
