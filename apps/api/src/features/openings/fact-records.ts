import { Injectable } from '@nestjs/common';
import type { Boundary } from '@strutbook/domain/stays/boundary.js';
import type { Json } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { toInstant, toWire } from '../../platform/http/instants.js';
import { Clock } from '../../platform/time/clock.js';
import type { ConsequencesDto } from '../../records/consequences/consequences.dto.js';
import { Consequences } from '../../records/consequences/consequences.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { refuseFutureBoundary } from '../../records/stays/future-boundary.js';
import { resolveMoment, type ToldMoment } from '../../records/stays/told-moment.js';
import { type LockedComponent, lockComponent } from './moment.js';

/** A moment of the fact: the boundary it is told by, whose log or days are meant, and the field that tells it. */
export interface MomentTold {
  readonly boundary: Boundary;
  readonly airframeId: string | null;
  readonly field: string;
}

/** A fact to record, with the moments it is told by: the first is when it happened. */
export interface NewFact<T> {
  readonly componentId: string;
  readonly kind: string;
  readonly moments: readonly MomentTold[];
  /** What the journal keeps beside the moments. */
  readonly body: Readonly<Record<string, Json>>;
  /** Checks and writes the fact under the act's number. */
  readonly write: (
    tx: Tx,
    component: LockedComponent,
    recorded: { readonly number: bigint; readonly moments: readonly ToldMoment[] },
  ) => Promise<T>;
}

/** Records facts of a component, each as one act that answers what it newly breaks. */
@Injectable()
export class FactRecords {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly consequences: Consequences,
    private readonly clock: Clock,
  ) {}

  /** Resolves the moments, writes the fact and computes again. Refuses: IN_THE_FUTURE, NO_SUCH_LOG_PAGE, NOT_FOUND, and as `write` does. */
  record<T extends { readonly id: string }>(
    actor: Actor,
    act: ActRequest,
    { componentId, kind, moments: told, body, write }: NewFact<T>,
  ): Promise<T & { consequences: ConsequencesDto }> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const moments: ToldMoment[] = [];
      for (const { boundary, airframeId, field } of told) {
        const of = { componentId, airframeId, now: this.clock.now() };
        const moment = await resolveMoment(tx, operatorId, boundary, of, field);
        refuseFutureBoundary(boundary, toInstant(moment.at), this.clock.now(), field);
        moments.push(moment);
      }
      const at = moments[0]?.at ?? this.clock.now();
      const component = await lockComponent(tx, operatorId, componentId, at);
      const before = await this.consequences.beforeOfComponents(tx, operatorId, [componentId], {
        from: null,
      });
      const number = await this.journal.number(tx);
      const fact = await write(tx, component, { number, moments });
      await this.projections.ofComponents(tx, operatorId, [componentId]);
      await this.journal.append(tx, actor, {
        number,
        stream: componentId,
        kind,
        body: { id: fact.id, ...body, ...momentsBody(told, moments) },
        about: [componentId],
        key: act.key,
      });
      const answer = { ...fact, consequences: await this.consequences.since(tx, operatorId, before) };
      return { status: 201, body: answer, number, resource: `/api/components/${componentId}/facts` };
    });
  }
}

/** Each moment under the name of its field, and how it was told where that was no instant. */
function momentsBody(
  told: readonly MomentTold[],
  moments: readonly ToldMoment[],
): Readonly<Record<string, Json>> {
  return Object.fromEntries(
    told.flatMap(({ field }, index): [string, Json][] => {
      const moment = moments[index];
      if (moment === undefined) return [];
      const { at, kind, text, airframeId } = moment;
      const instant: [string, Json] = [field, toWire(at)];
      return kind === 'instant' ? [instant] : [instant, [`${field}Told`, { kind, text, airframeId }]];
    }),
  );
}
