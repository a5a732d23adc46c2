import type { operations } from '@strutbook/api-client/schema.gen.js';

/** What the server is asked for. */
export type DueAsk = NonNullable<operations['dueListPage']['parameters']['query']>;

/** What the address says of the list: words as typed there, so that a list can be sent to somebody. */
export interface DueSearch {
  readonly airframe?: string;
  readonly position?: string;
  readonly component?: string;
  readonly status?: string;
  readonly kind?: string;
  readonly part?: string;
  readonly hours?: string;
  readonly cycles?: string;
  readonly within?: string;
  readonly find?: string;
  readonly basis?: string;
  readonly days?: string;
  readonly sort?: string;
  readonly order?: string;
}

export const DUE_SEARCH = [
  ...['airframe', 'position', 'component', 'status', 'kind', 'part', 'hours', 'cycles', 'within'],
  ...['find', 'basis', 'days', 'sort', 'order'],
] as readonly (keyof DueSearch)[];

/** The filters, which can leave something out; what the list is of and how it is sorted are none. */
export const FILTERS = ['status', 'kind', 'part', 'hours', 'cycles', 'within', 'find'] as const;

const numberOf = (word: string | undefined): number | undefined =>
  word !== undefined && /^\d+$/.test(word.trim()) ? Number(word.trim()) : undefined;

/** Only what is given: search objects have no undefined members. */
function given<Shape extends object>(values: Shape): Partial<Shape> {
  return Object.fromEntries(
    Object.entries(values).filter(([, value]) => value !== undefined && value !== ''),
  ) as Partial<Shape>;
}

/** What is asked of the server; words that are none of its own are left to it to refuse. */
export function askOf(search: DueSearch): DueAsk {
  const several = (word: string | undefined) => (word === undefined ? undefined : word.split(','));
  // An airframe that a position of is chosen is no second thing the list is of.
  const airframeId = search.position === undefined ? search.airframe : undefined;
  return given({
    airframeId,
    positionId: search.position,
    componentId: search.component,
    status: several(search.status) as DueAsk['status'],
    kind: several(search.kind) as DueAsk['kind'],
    partNumber: search.part?.trim(),
    withinHours: numberOf(search.hours),
    withinCycles: numberOf(search.cycles),
    withinDays: numberOf(search.within),
    search: search.find?.trim(),
    basis: search.basis as DueAsk['basis'],
    days: numberOf(search.days),
    sort: search.sort as DueAsk['sort'],
    direction: search.order as DueAsk['direction'],
  }) as DueAsk;
}

/** The address with some words changed, and those that are empty left out. */
export function changed(
  search: DueSearch,
  next: Partial<Record<keyof DueSearch, string | undefined>>,
): DueSearch {
  return given({ ...search, ...next }) as DueSearch;
}

/** The address without any filter. */
export function unfiltered(search: DueSearch): DueSearch {
  return changed(search, Object.fromEntries(FILTERS.map((name) => [name, undefined])));
}

export const isFiltered = (search: DueSearch): boolean => FILTERS.some((name) => search[name] !== undefined);

/** Where the whole list can be fetched as a file. */
export function exportHref(search: DueSearch, format: 'csv' | 'ndjson'): string {
  const words = new URLSearchParams(
    Object.entries(askOf(search)).map(([name, value]) => [name, [value].flat().join(',')]),
  ).toString();
  return `/api/due-points.${format}${words === '' ? '' : `?${words}`}`;
}
