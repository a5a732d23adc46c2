import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import type { OverrunDto } from '../../records/consequences/consequences.dto.js';
import { describeOverruns } from '../../records/consequences/overrun.mapper.js';
import { Overruns } from '../../records/overruns/overruns.js';
import { Structure } from '../../records/stays/structure.js';
import { everOnAirframes } from '../../records/usage/kinship.js';

/** Spans flown over a limit, of a component or on an airframe. */
@Injectable()
export class OverrunsService {
  constructor(
    private readonly database: Database,
    private readonly overruns: Overruns,
    private readonly structure: Structure,
  ) {}

  /** Those of a component and of what hangs in it now. Refuses: NOT_FOUND. */
  ofComponent(actor: Actor, id: string): Promise<OverrunDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId, id } };
      orNotFound(await tx.component.findUnique({ where, select: { id: true } }), 'component');
      const beneath = await this.structure.beneath(tx, operatorId, [id], null);
      const componentIds = [id, ...beneath.flatMap((slot) => slot.componentId ?? [])];
      const found = await this.overruns.of(tx, operatorId, { componentIds, airframeIds: [] });
      return describeOverruns(tx, operatorId, found);
    });
  }

  /** Those that were flown on an airframe, whatever hangs there now. Refuses: NOT_FOUND. */
  ofAirframe(actor: Actor, id: string): Promise<OverrunDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId, id } };
      orNotFound(await tx.airframe.findUnique({ where, select: { id: true } }), 'airframe');
      const componentIds = await everOnAirframes(tx, operatorId, [id]);
      const found = await this.overruns.of(tx, operatorId, { componentIds, airframeIds: [id] });
      const here = found.filter(({ first, last }) => first.airframeId === id || last.airframeId === id);
      return describeOverruns(tx, operatorId, here);
    });
  }
}
