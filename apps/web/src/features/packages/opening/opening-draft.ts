import type { components } from '@strutbook/api-client/schema.gen.js';
import type { PackageKind } from '../../../server/work.js';
import {
  EMPTY_ORDER,
  type OrderDraft,
  type OrderOn,
  orderFaults,
  orderRequest,
  type Standing,
} from '../order/order-draft.js';
import { NO_TITLE, ownStep, type TypedStep } from '../own-step.js';

export type Section = 'work' | 'order' | 'steps' | 'requirements' | 'look-over';

/** A requirement and what it is due on. */
export interface NamedDuty {
  readonly requirementId: string;
  readonly airframeId?: string;
  readonly positionId?: string;
  readonly componentId?: string;
}

/** A package to be opened, as typed. */
export interface OpeningDraft {
  readonly kind: PackageKind | '';
  readonly subject: 'airframe' | 'component';
  readonly airframeId: string;
  readonly componentId: string;
  readonly ruleSet: string;
  readonly reference: string;
  readonly order: OrderDraft;
  readonly stepsFrom: 'procedure' | 'own';
  readonly procedureId: string;
  readonly ownSteps: readonly TypedStep[];
  readonly duties: readonly NamedDuty[];
  /** Null while the suggested one stands. */
  readonly title: string | null;
}

export const EMPTY_OPENING: OpeningDraft = {
  kind: '',
  subject: 'airframe',
  airframeId: '',
  componentId: '',
  ruleSet: '',
  reference: '',
  order: EMPTY_ORDER,
  stepsFrom: 'procedure',
  procedureId: '',
  ownSteps: [],
  duties: [],
  title: null,
};

/** What the server is asked to open. */
export type OpeningRequest = components['schemas']['NewPackageDto'];

const ORDERED: ReadonlySet<string> = new Set(['engine-change', 'pod-swap', 'component-change']);
/** Work on an airframe's own positions. */
const ON_AIRFRAME: ReadonlySet<string> = new Set(['engine-change', 'pod-swap']);

export const isOrdered = ({ kind }: Pick<OpeningDraft, 'kind'>): boolean => ORDERED.has(kind);
export const isOfAirframe = ({ kind }: Pick<OpeningDraft, 'kind'>): boolean => ON_AIRFRAME.has(kind);

/** What the order's places are of. */
export const orderOn = ({ subject, airframeId, componentId }: OpeningDraft): OrderOn =>
  subject === 'airframe' ? { kind: 'airframe', id: airframeId } : { kind: 'component', id: componentId };

/** The sections to be filled, in order. */
export const sectionsOf = (draft: OpeningDraft): readonly Section[] => [
  'work',
  ...(isOrdered(draft) ? (['order'] as const) : []),
  'steps',
  'requirements',
  'look-over',
];

export type Faults = Readonly<Record<string, string>>;

function workFaults({ kind, subject, airframeId, componentId }: OpeningDraft): Faults {
  return {
    ...(kind === '' ? { kind: 'Choose the kind of work' } : {}),
    ...(subject === 'airframe' && airframeId === '' ? { airframeId: 'Choose the airframe' } : {}),
    ...(subject === 'component' && componentId === ''
      ? { componentId: 'Choose the component by its serial' }
      : {}),
  };
}

function stepsFaults(draft: OpeningDraft): Faults {
  const { stepsFrom, procedureId, ownSteps } = draft;
  if (stepsFrom === 'procedure') return procedureId === '' ? { procedureId: 'Choose the procedure' } : {};
  // What is ordered has its own steps already.
  if (ownSteps.length === 0) return isOrdered(draft) ? {} : { steps: 'Add at least one step' };
  const faults: Record<string, string> = {};
  for (const [place, { title }] of ownSteps.entries())
    if (title.trim() === '') faults[`steps.${place}.title`] = NO_TITLE;
  return faults;
}

/** What is missing in a section; the server is the judge of the rest. */
export function faultsIn(section: Section, draft: OpeningDraft, there: Standing | null): Faults {
  switch (section) {
    case 'work':
      return workFaults(draft);
    case 'order':
      return orderFaults(draft.order, orderOn(draft), there) as Faults;
    case 'steps':
      return stepsFaults(draft);
    case 'requirements':
      return {};
    case 'look-over':
      return draft.title?.trim() === '' ? { title: 'Enter what is to be done, in one line' } : {};
  }
}

/** In which section a field of the server stands. */
export function sectionOfField(path: string): Section {
  if (path.startsWith('order')) return 'order';
  if (path.startsWith('steps') || path === 'procedureId') return 'steps';
  if (path.startsWith('requirements')) return 'requirements';
  return path === 'title' ? 'look-over' : 'work';
}

/** The request a draft without faults means. */
export function openingRequest(draft: OpeningDraft, title: string, there: Standing | null): OpeningRequest {
  const { kind, subject, airframeId, componentId, ruleSet, reference, duties } = draft;
  return {
    kind: kind === '' ? 'inspection' : kind,
    title: title.trim(),
    ...(reference.trim() === '' ? {} : { reference: reference.trim() }),
    ...(subject === 'airframe' ? { airframeId } : { componentId, ...(ruleSet === '' ? {} : { ruleSet }) }),
    ...(draft.stepsFrom === 'procedure'
      ? { procedureId: draft.procedureId }
      : draft.ownSteps.length === 0
        ? {}
        : { steps: draft.ownSteps.map(ownStep) }),
    ...(isOrdered(draft) ? { order: orderRequest(draft.order, orderOn(draft), there) } : {}),
    ...(duties.length === 0 ? {} : { requirements: [...duties] }),
  };
}
