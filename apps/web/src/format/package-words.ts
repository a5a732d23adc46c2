/** What kind of work a package is. */
const KINDS: Readonly<Record<string, string>> = {
  'engine-change': 'Engine change',
  'pod-swap': 'Pod swap',
  inspection: 'Inspection',
  'component-change': 'Component change',
  directive: 'Directive',
};

/** 'Engine change' */
export const packageKind = (kind: string): string => KINDS[kind] ?? kind.replaceAll('-', ' ');

/** Each kind with its word, for choosing one. */
export const PACKAGE_KINDS = Object.entries(KINDS).map(([value, label]) => ({ value, label }));
