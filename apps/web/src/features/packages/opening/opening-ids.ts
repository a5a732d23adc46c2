import { ORDER_IDS } from '../order/order-draft.js';

/** The controls' ids, by the server's names of the fields. */
const IDS: Readonly<Record<string, string>> = {
  ...ORDER_IDS,
  kind: 'opening-kind',
  airframeId: 'opening-airframe',
  componentId: 'opening-component',
  ruleSet: 'opening-rules',
  reference: 'opening-reference',
  procedureId: 'opening-procedure',
  steps: 'opening-add-step',
  title: 'opening-title',
};

/** 'steps.0.title' -> 'opening-steps-0-title' */
export const openingId = (path: string): string => IDS[path] ?? `opening-${path.replaceAll('.', '-')}`;
