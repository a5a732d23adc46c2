/** What kind of work a package is. */
const KINDS = {
  'engine-change': 'Engine change',
  'pod-swap': 'Pod swap',
  inspection: 'Inspection',
  'component-change': 'Component change',
  directive: 'Directive',
} as const;

type Kind = keyof typeof KINDS;

export const isPackageKind = (kind: unknown): kind is Kind => typeof kind === 'string' && kind in KINDS;

/** 'Engine change' */
export const packageKind = (kind: string): string =>
  isPackageKind(kind) ? KINDS[kind] : kind.replaceAll('-', ' ');

/** Each kind with its word, for choosing one. */
export const PACKAGE_KINDS = Object.entries(KINDS).map(([value, label]) => ({ value, label }));

/** The place a package changes; a bare number is said as a position: '3' -> 'position 3'. */
export const packagePlace = (place: string): string => (/^\d+$/.test(place) ? `position ${place}` : place);
