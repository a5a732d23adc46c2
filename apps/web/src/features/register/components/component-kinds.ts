import type { ComponentKind } from '../../../server/components.js';

/** The kinds of components in the words shown to people. */
export const COMPONENT_KINDS: readonly { readonly value: ComponentKind; readonly label: string }[] = [
  { value: 'engine', label: 'Engine' },
  { value: 'module', label: 'Module' },
  { value: 'part', label: 'Part' },
  { value: 'pod', label: 'Pod' },
  { value: 'apu', label: 'Auxiliary power unit' },
];

/** 'Engine', 'Auxiliary power unit'. */
export const kindWord = (kind: ComponentKind): string =>
  COMPONENT_KINDS.find(({ value }) => value === kind)?.label ?? kind;

/** The kind a word stands for; undefined for any other word. */
export const kindOf = (word: string | undefined): ComponentKind | undefined =>
  COMPONENT_KINDS.find(({ value }) => value === word)?.value;
