import { type Boundary, resolveBoundary } from '@strutbook/domain/stays/boundary.js';
import type { Tx } from '../../platform/database/database.js';
import { dayFromWire, fromInstant } from '../../platform/http/instants.js';
import { orRefuse, refuse } from '../../platform/problems/refusal.error.js';
import { loadBoundaryFacts } from './boundary-facts.js';
import { airframesOfSlots } from './stay-facts.js';
import { boundaryText } from './stays.js';

/** A moment of a component or an airframe, as it was told and as the instant it means. */
export interface ToldMoment {
  readonly at: Date;
  readonly kind: Boundary['kind'];
  /** The page or day that was typed; null for an instant. */
  readonly text: string | null;
  /** Whose log or days were meant; null where none were. */
  readonly airframeId: string | null;
}

/** Whose moment it is, and whose log or days are meant where that is told. */
export interface MomentOf {
  readonly componentId: string | null;
  readonly airframeId: string | null;
  readonly now: Date;
}

/**
 * The instant a told moment means. Pages and days are those of the airframe told, else of the one the component hung on
 * that day; days without any are UTC's. Refuses: NOT_FOUND, NO_SUCH_LOG_PAGE, INVALID_FIELDS (a page of no airframe).
 */
export async function resolveMoment(
  tx: Tx,
  operatorId: number,
  boundary: Boundary,
  of: MomentOf,
  field: string,
): Promise<ToldMoment> {
  const text = boundaryText(boundary);
  if (boundary.kind === 'instant')
    return { at: fromInstant(boundary.at), kind: boundary.kind, text, airframeId: null };
  const airframeId = of.airframeId ?? (await airframeThen(tx, operatorId, boundary, of));
  if (airframeId === null && boundary.kind === 'after-page')
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: `${field}.airframeId`,
          reason: 'Whose log the page is in is not told.',
          fix: 'Name the airframe.',
        },
      ],
    });
  const facts = await loadBoundaryFacts(tx, operatorId, airframeId === null ? [] : [airframeId], boundary);
  const { at } = orRefuse(
    resolveBoundary(boundary, facts),
    boundary.kind === 'after-page' ? `${field}.page` : `${field}.on`,
  );
  return { at: fromInstant(at), kind: boundary.kind, text, airframeId };
}

/** The airframe the component hung on on the day told, or hangs on now. */
async function airframeThen(
  tx: Tx,
  operatorId: number,
  boundary: Boundary,
  { componentId, now }: MomentOf,
): Promise<string | null> {
  if (componentId === null) return null;
  const day = boundary.kind === 'before-first' || boundary.kind === 'after-last' ? boundary.on : null;
  const noon = day === null ? now : new Date((dayFromWire(day) ?? now).getTime() + 43_200_000);
  const stay = await tx.stay.findFirst({
    where: {
      ...{ operatorId, componentId, voidedSeq: null, slotId: { not: null }, fromAt: { lte: noon } },
      OR: [{ toAt: null }, { toAt: { gt: noon } }],
    },
    select: { slotId: true },
  });
  if (stay?.slotId == null) return null;
  const [first] = await airframesOfSlots(tx, operatorId, [stay.slotId], noon);
  return first ?? null;
}
