import { Injectable } from '@nestjs/common';
import type { CalendarDate } from '@strutbook/domain/units/calendar.js';
import type { Tx } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';

/** What an authorisation lets a person sign. */
export const SCOPES = ['work', 'inspection', 'release'] as const;

export type Scope = (typeof SCOPES)[number];

/** An authorisation as it stands on a day on which it is good. */
export interface AuthorisationInForce {
  readonly id: string;
  readonly personId: string;
  readonly scope: Scope;
  /** Null: on every type of airframe. */
  readonly airframeTypeId: string | null;
  readonly fromOn: CalendarDate;
  /** The last day it is good for; null while no end is set. */
  readonly toOn: CalendarDate | null;
  readonly reference: string;
}

/** Who may sign what on a day. Voided ones never count; a new one counts with the act that records it. */
@Injectable()
export class Authorisations {
  /**
   * Whether the person may sign work, inspections or releases of a type of airframe on that day, both ends included.
   * With no type (work on a component off every airframe) only an authorisation for all types will do. `on` is a day
   * 'YYYY-MM-DD', or an instant, whose day in UTC counts.
   */
  async holds(
    tx: Tx,
    operatorId: number,
    personId: string,
    scope: Scope,
    airframeTypeId: string | null,
    on: CalendarDate | Date,
  ): Promise<boolean> {
    const inForce = await this.inForce(tx, operatorId, [personId], on);
    return inForce.some((held) => covers(held, scope, airframeTypeId));
  }

  /**
   * Keeps what these people may sign as it is until the act is done: what is taken away at the same moment is taken
   * away before it or after it.
   */
  async hold(tx: Tx, operatorId: number, personIds: readonly string[]): Promise<void> {
    await tx.$queryRaw`SELECT id FROM authorisation
      WHERE operator_id = ${operatorId}::int AND person_id = ANY (${[...personIds]}::uuid[]) AND voided_seq IS NULL
      ORDER BY id FOR SHARE`;
  }

  /** What these people may sign on that day, by person, scope and start. */
  async inForce(
    tx: Tx,
    operatorId: number,
    personIds: readonly string[],
    on: CalendarDate | Date,
  ): Promise<AuthorisationInForce[]> {
    const day = typeof on === 'string' ? new Date(`${on}T00:00:00Z`) : new Date(`${dayToWire(on)}T00:00:00Z`);
    const rows = await tx.authorisation.findMany({
      where: {
        operatorId,
        personId: { in: [...new Set(personIds)] },
        voidedSeq: null,
        fromOn: { lte: day },
        OR: [{ toOn: null }, { toOn: { gte: day } }],
      },
      orderBy: [{ personId: 'asc' }, { scope: 'asc' }, { fromOn: 'asc' }, { id: 'asc' }],
    });
    return rows.map(({ id, personId, scope, airframeTypeId, fromOn, toOn, reference }) => ({
      ...{ id, personId, scope: scope as Scope, airframeTypeId, reference },
      fromOn: dayToWire(fromOn),
      toOn: toOn === null ? null : dayToWire(toOn),
    }));
  }
}

/** Whether an authorisation is for this scope and this type of airframe, all types included. Total. */
export function covers(
  held: Pick<AuthorisationInForce, 'scope' | 'airframeTypeId'>,
  scope: Scope,
  airframeTypeId: string | null,
): boolean {
  return held.scope === scope && (held.airframeTypeId === null || held.airframeTypeId === airframeTypeId);
}
