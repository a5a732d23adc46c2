import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { databaseErrorIn } from '../../platform/database/database-error.js';
import { fromDatabaseText, toInstant, toWire } from '../../platform/http/instants.js';
import { RefusalError } from '../../platform/problems/refusal.error.js';
import type { FlightCommand } from './flight-command.js';

interface Detail {
  readonly componentId: string;
  readonly fromAt: string;
  readonly toAt: string | null;
}

/** A flight that the database refused because a component came or went in the middle of it. */
const CONTAINS_BOUNDARY = 'SB002';

/** Names the component whose coming or going lies inside a refused flight. */
@Injectable()
export class BoundaryInFlight {
  constructor(private readonly database: Database) {}

  /** Runs `work`; where the database finds a boundary inside the flight under way, the refusal names both records. */
  async named<T>(
    actor: Actor,
    underWay: () => { readonly flight: FlightCommand; readonly path: string },
    work: () => Promise<T>,
  ): Promise<T> {
    try {
      return await work();
    } catch (error) {
      const said = databaseErrorIn(error);
      if (said?.code !== CONTAINS_BOUNDARY || said.detail === null) throw error;
      throw await this.refusal(actor, JSON.parse(said.detail) as Detail, underWay());
    }
  }

  private async refusal(
    actor: Actor,
    { componentId, fromAt, toAt }: Detail,
    { flight, path }: { flight: FlightCommand; path: string },
  ): Promise<RefusalError> {
    const { operatorId } = actor;
    const component = await this.database.inOperator(actor, (tx) =>
      tx.component.findUnique({
        where: { operatorId_id: { operatorId, id: componentId } },
        select: { serialNumber: true },
      }),
    );
    const inside = [fromAt, toAt]
      .flatMap((text) => (text === null ? [] : [fromDatabaseText(text)]))
      .find((at) => toInstant(at) > flight.takeOffAt && toInstant(at) < flight.landingAt);
    const named = component === null ? {} : { serialNumber: component.serialNumber };
    return new RefusalError(
      { code: 'FLIGHT_CONTAINS_BOUNDARY', at: toWire(inside ?? fromDatabaseText(fromAt)), ...named },
      { field: `${path}.landingAt` },
    );
  }
}
