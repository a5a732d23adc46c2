import { Injectable } from '@nestjs/common';
import { type Counts, subtractCounts } from '@strutbook/domain/usage/counts.js';
import { type ExposureSpan, flattenExposures } from '@strutbook/domain/usage/flatten-exposures.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { fromInstant } from '../../platform/http/instants.js';
import { readClocks } from './clock-readings.js';
import { loadExposureFacts } from './exposure-facts.js';
import { withAllAbove, withAllBeneath } from './kinship.js';
import { lockRunning } from './lock-running.js';

/** A row of the projection: a closed span with what it saw of its clock, or an open one with the reading at its start. */
export interface ExposureRow extends ExposureSpan {
  readonly counts: Counts;
}

/** Stays flattened down the tree. Rows are rewritten, from the facts, for the components an act touches. */
@Injectable()
export class Exposures {
  /**
   * Writes again the exposures of these components and of all that ever hung beneath them: changing a stay in
   * the past moves what hung there then, not what hangs there now. Answers the components written.
   */
  async rebuild(tx: Tx, operatorId: number, componentIds: readonly string[]): Promise<string[]> {
    const touched = await withAllBeneath(tx, operatorId, componentIds);
    await lockRunning(tx, operatorId, touched);
    const rows = await this.fromFacts(tx, operatorId, touched);
    await tx.exposure.deleteMany({ where: { operatorId, componentId: { in: touched } } });
    await tx.exposure.createMany({
      data: rows.map(({ counts, from, to, ...span }) => ({
        operatorId,
        id: newId(),
        ...span,
        fromAt: fromInstant(from),
        toAt: to === null ? null : fromInstant(to),
        ...counts,
      })),
    });
    await tx.$executeRaw`
      UPDATE carrier a SET last_boundary_at = greatest(a.last_boundary_at, e.latest)
        FROM (SELECT c.airframe_id, max(greatest(x.from_at, x.to_at)) AS latest
                FROM exposure x JOIN carrier c ON c.operator_id = x.operator_id AND c.id = x.carrier_id
               WHERE x.operator_id = ${operatorId}::int AND x.component_id = ANY (${touched}::uuid[])
               GROUP BY c.airframe_id) AS e
       WHERE a.operator_id = ${operatorId}::int AND a.id = e.airframe_id
         AND (a.last_boundary_at IS NULL OR a.last_boundary_at < e.latest)`;
    return touched;
  }

  /** The exposures of exactly these components as the facts say they are, nothing written. */
  async fromFacts(tx: Tx, operatorId: number, componentIds: readonly string[]): Promise<ExposureRow[]> {
    const facts = await loadExposureFacts(tx, operatorId, await withAllAbove(tx, operatorId, componentIds));
    const spans = componentIds.flatMap((componentId) =>
      flattenExposures({ ...facts, componentId, slots: facts.slotsFor(componentId) }),
    );
    const asks = spans.flatMap(({ carrierId, from, to }) =>
      [from, ...(to === null ? [] : [to])].map((at) => ({ carrierId, at: fromInstant(at) })),
    );
    const reading = await readClocks(tx, operatorId, asks);
    return spans.map((span) => {
      const { carrierId, from, to } = span;
      const start = reading({ carrierId, at: fromInstant(from) });
      return {
        ...span,
        counts: to === null ? start : subtractCounts(reading({ carrierId, at: fromInstant(to) }), start),
      };
    });
  }
}
