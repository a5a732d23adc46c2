import type { Boundary } from '@strutbook/domain/stays/boundary.js';
import { type BoundaryDto, toBoundary } from '../../platform/http/boundary.dto.js';
import { momentOf, toInstant } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';

/** A moment as it is asked: by an instant, or by a boundary that may be a log page or a day. */
export interface AskedMoment {
  readonly at: string | undefined;
  readonly boundary: BoundaryDto | undefined;
  /** The name of the instant's field: 'at'. */
  readonly field: string;
  /** The name of the boundary's field: 'boundary'. */
  readonly boundaryField: string;
}

/** The boundary that was asked. Refuses: INVALID_FIELDS (neither, or both). */
export function toldBoundary({ at, boundary, field, boundaryField }: AskedMoment): Boundary {
  if (at !== undefined && boundary === undefined) return { kind: 'instant', at: toInstant(momentOf(at)) };
  if (boundary !== undefined && at === undefined) return toBoundary(boundary, boundaryField);
  const reason = at === undefined ? 'When it was is not told.' : 'When it was is told twice.';
  const fix = `Send either ${field} or ${boundaryField}.`;
  return refuse({ code: 'INVALID_FIELDS', fields: [{ field, reason, fix }] });
}

/** The columns that keep how a moment was told. Total. */
export function toldColumns({
  at,
  kind,
  text,
  airframeId,
}: {
  readonly at: Date;
  readonly kind: string;
  readonly text: string | null;
  readonly airframeId: string | null;
}) {
  return { at, atKind: kind, atText: text, atAirframeId: airframeId };
}
