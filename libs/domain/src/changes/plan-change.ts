import type { Refusal } from '../refusals.js';
import { accepted, type Result, refused } from '../result.js';
import { type Precision, resolveBoundary } from '../stays/boundary.js';
import { refusalOfInstant } from '../stays/plan-stay.js';
import type { Instant } from '../units/minutes.js';
import type { Stay } from '../usage/flatten-exposures.js';
import type {
  ChangeFacts,
  ChangePlan,
  ChangeRequest,
  ChangingComponent,
  EndedStay,
  OpenedStay,
} from './change.js';
import { objectionsToFitting } from './objections-to-fitting.js';

export type {
  ChangeFacts,
  ChangePlan,
  ChangeRequest,
  ChangingComponent,
  EndedStay,
  OpenedStay,
} from './change.js';

interface Removal {
  readonly stay: Stay;
  readonly component: ChangingComponent;
  readonly at: Instant;
  readonly precision: Precision;
  readonly toLocationId: string;
}

/**
 * Plans a change at a slot, of a position or of a component, as one act: what comes off goes to a location, what
 * goes on leaves its own.
 *
 * Refuses: NOTHING_TO_CHANGE, NO_SUCH_LOG_PAGE, NOT_INSTALLED_THERE, NOT_OPEN, ENDS_BEFORE_START,
 * INSIDE_A_FLIGHT, BEFORE_OPENING, BEFORE_MANUFACTURE, AFTER_SCRAP, INSTALLED_BEFORE_REMOVED, WRONG_KIND,
 * SAME_PLACE, ALREADY_INSTALLED, STAY_OVERLAP, SLOT_OCCUPIED.
 * Objections (never refusals): a model not authorised there, an unserviceable part, those against lives.
 */
export function planChange(request: ChangeRequest, facts: ChangeFacts): Result<ChangePlan, Refusal> {
  const { off, on } = request;
  if (off === null && on === null) return refused({ code: 'NOTHING_TO_CHANGE', slotId: request.slotId });
  const removal = off === null ? null : planRemoval(off, facts);
  if (removal !== null && !removal.ok) return removal;
  const removed = removal?.value ?? null;
  const ends: EndedStay[] =
    removed === null ? [] : [{ stayId: removed.stay.id, at: removed.at, precision: removed.precision }];
  const opens: OpenedStay[] = removed === null ? [] : [storing(removed)];
  if (on === null) return accepted({ ends, opens, objections: [] });
  return planInstallation(on, removed, facts, { ends, opens });
}

function storing({ component, toLocationId, at, precision }: Removal): OpenedStay {
  return { componentId: component.id, slotId: null, locationId: toLocationId, from: at, to: null, precision };
}

function planRemoval(off: NonNullable<ChangeRequest['off']>, facts: ChangeFacts): Result<Removal, Refusal> {
  const resolved = resolveBoundary(off.boundary, facts);
  if (!resolved.ok) return resolved;
  const { at, precision } = resolved.value;
  const stay = facts.slot.stays.find((there) => there.from <= at && (there.to === null || there.to > at));
  const component = stay === undefined ? undefined : facts.components.get(stay.componentId);
  if (stay === undefined || component === undefined || component.serial !== off.expectedSerial)
    return refused({
      code: 'NOT_INSTALLED_THERE',
      slotId: facts.slot.id,
      expectedSerial: off.expectedSerial,
      foundSerial: component?.serial ?? null,
      at,
    });
  if (stay.to !== null) return refused({ code: 'NOT_OPEN', stayId: stay.id, to: stay.to });
  const refusal = refusalOfInstant(component.id, at, { ...component, flights: facts.flights });
  if (refusal !== null) return refused(refusal);
  if (at <= stay.from) return refused({ code: 'ENDS_BEFORE_START', stayId: stay.id, from: stay.from, at });
  return accepted({ stay, component, at, precision, toLocationId: off.toLocationId });
}

function planInstallation(
  on: NonNullable<ChangeRequest['on']>,
  removed: Removal | null,
  facts: ChangeFacts,
  { ends, opens }: Pick<ChangePlan, 'ends' | 'opens'>,
): Result<ChangePlan, Refusal> {
  const resolved = resolveBoundary(on.boundary, facts);
  if (!resolved.ok) return resolved;
  const { at, precision } = resolved.value;
  const component = facts.components.get(on.componentId);
  if (component === undefined)
    throw new Error(`the component to install is not among the facts: ${on.componentId}`);
  const open = component.stays.find((stay) => stay.to === null && stay.id !== removed?.stay.id);
  const refusal =
    refusalOfInstant(component.id, at, { ...component, flights: facts.flights }) ??
    refusalOfOrder(component, at, removed) ??
    refusalOfIncoming(component, at, removed, facts) ??
    refusalOfSlot(at, removed, facts);
  if (refusal !== null) return refused(refusal);
  const installed = {
    componentId: component.id,
    slotId: facts.slot.id,
    locationId: null,
    from: at,
    to: null,
    precision,
  };
  return accepted({
    ends: open === undefined ? ends : [...ends, { stayId: open.id, at, precision }],
    // What came off may go on again: its stay at the location then ends in the same act.
    opens: [
      ...opens.map((stay) => (stay.componentId === component.id ? { ...stay, to: at } : stay)),
      installed,
    ],
    objections: [...objectionsToFitting(component, facts, at), ...facts.lifeObjections],
  });
}

function refusalOfOrder(component: ChangingComponent, at: Instant, removed: Removal | null): Refusal | null {
  if (removed === null) return null;
  if (at < removed.at) return { code: 'INSTALLED_BEFORE_REMOVED', removedAt: removed.at, installedAt: at };
  if (at === removed.at && component.id === removed.component.id)
    return { code: 'SAME_PLACE', componentId: component.id, stayId: removed.stay.id };
  return null;
}

function refusalOfIncoming(
  { id: componentId, kind, stays }: ChangingComponent,
  at: Instant,
  removed: Removal | null,
  { slot }: ChangeFacts,
): Refusal | null {
  if (kind !== slot.kind)
    return { code: 'WRONG_KIND', componentId, kind, slotId: slot.id, slotKind: slot.kind };
  for (const stay of stays) {
    if (stay.id === removed?.stay.id || (stay.to !== null && stay.to <= at)) continue;
    if (stay.slotId === slot.id && stay.from <= at)
      return { code: 'SAME_PLACE', componentId, stayId: stay.id };
    if (stay.to === null && stay.slotId !== null)
      return { code: 'ALREADY_INSTALLED', componentId, stayId: stay.id, slotId: stay.slotId, at };
    if (stay.to !== null || stay.from >= at)
      return { code: 'STAY_OVERLAP', componentId, stayId: stay.id, at };
  }
  return null;
}

function refusalOfSlot(at: Instant, removed: Removal | null, { slot }: ChangeFacts): Refusal | null {
  const there = slot.stays.find((stay) => stay.id !== removed?.stay.id && (stay.to === null || stay.to > at));
  if (there === undefined) return null;
  return { code: 'SLOT_OCCUPIED', slotId: slot.id, stayId: there.id, componentId: there.componentId, at };
}
