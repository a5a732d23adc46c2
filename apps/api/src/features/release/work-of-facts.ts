import type {
  OrderSnapshot,
  ReleaserSnapshot,
  SignerSnapshot,
  ToolUse,
  WorkSnapshot,
} from '@strutbook/domain/release/work-snapshot.js';
import { type CalendarDate, dateOf } from '@strutbook/domain/units/calendar.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { Actor } from '../../platform/access/actor.js';
import { covers, type Scope } from '../../records/authorisations/authorisations.js';
import { type KeptStep, keptStep, stepFacts } from '../../records/work/kept-step.js';
import type { AuthorisationRow, ChangeRow, OrderRow, ReleaseFacts } from './release-facts.js';
import { placeWords } from './work.js';

/** The work by steps as the check looks at it. Total for rows this server wrote. */
export function workSnapshot(facts: ReleaseFacts): WorkSnapshot {
  const steps = facts.steps.map(keptStep);
  return {
    steps: steps.map(stepFacts),
    items: facts.items,
    toolUses: steps.flatMap((step) => toolUses(step, facts)),
    orders: facts.orders.map((order) => orderSnapshot(order, facts.changes)),
    signers: steps.flatMap((step) => signers(step, facts)),
  };
}

/** Who asks, where they are certifying staff: whether they may release this type today. Total. */
export function releaserSnapshot(
  { personId, fullName, licence, roles }: Actor,
  facts: ReleaseFacts,
  at: Instant,
): ReleaserSnapshot | null {
  if (!roles.includes('certifying-staff')) return null;
  const authorised = holding(facts, { personId, scope: 'release', on: dateOf(at) }) !== null;
  return { personId, name: fullName, licence, authorised };
}

function toolUses({ entries }: KeptStep, { calibrations }: ReleaseFacts): ToolUse[] {
  return entries.flatMap(({ id, toolId, tool, enteredAt }) =>
    toolId === null || tool === null
      ? []
      : {
          entryId: id,
          toolId,
          serial: tool,
          on: enteredAt.slice(0, 10),
          calibrations: calibrations
            .filter((row) => row.toolId === toolId)
            .map(({ calibratedOn, dueOn }) => ({ calibratedOn, dueOn })),
        },
  );
}

function orderSnapshot(order: OrderRow, changes: readonly ChangeRow[]): OrderSnapshot {
  const made = changes.filter((change) => change.slotId === order.slotId);
  const place = placeWords(order);
  return {
    id: order.id,
    place: order.position === null ? place : `${place.charAt(0).toLowerCase()}${place.slice(1)}`,
    positionNumber: order.position,
    slotId: order.slotId,
    outgoing: order.outgoing,
    incoming: order.incoming,
    // Removal and installation may stand as two changes, each with its own counters.
    made:
      made.length === 0
        ? null
        : {
            outgoingId: made.findLast((change) => change.off !== null)?.off?.id ?? null,
            incomingId: made.findLast((change) => change.on !== null)?.on?.id ?? null,
          },
    installedNow: order.installed,
  };
}

function signers({ signatures }: KeptStep, facts: ReleaseFacts): SignerSnapshot[] {
  return signatures
    .filter((signature) => !signature.undone)
    .map(({ id, personId, personName, meaning, signedAt }) => {
      const scope = meaning === 'done' ? 'work' : 'inspection';
      const on = dateOf(signedAt);
      const authorised = holding(facts, { personId, scope, on }) !== null;
      return { signatureId: id, personId, name: personName, scope, on, authorised };
    });
}

interface Asked {
  readonly personId: string;
  readonly scope: Scope;
  readonly on: CalendarDate;
}

/** The authorisation that covers a person, a scope and a day on what is released; null when there is none. Total. */
export function holding(
  { authorisations, airframe }: Pick<ReleaseFacts, 'authorisations' | 'airframe'>,
  { personId, scope, on }: Asked,
): AuthorisationRow | null {
  return (
    authorisations.find(
      (row) =>
        row.personId === personId &&
        covers({ scope: row.scope as Scope, airframeTypeId: row.typeId }, scope, airframe?.typeId ?? null) &&
        row.fromOn <= on &&
        (row.toOn === null || on <= row.toOn),
    ) ?? null
  );
}
