import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { Database } from '../../platform/database/database.js';
import { Id } from '../../platform/http/id.js';
import { momentOf } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { AirframeBalanceDto, AirframeBalanceQueryDto } from './airframe-balance.dto.js';
import { drawUpOfAirframe } from './airframe-balance.js';
import { drawUpBalance } from './draw-up.js';
import { TrialBalanceDto } from './trial-balance.dto.js';

@ApiTags('records check')
@Controller('trial-balance')
export class TrialBalanceController {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** At every position: what the airframe flew, against what engines took, what passed empty and what did not run. */
  @Get()
  get(@CurrentActor() actor: Actor): Promise<TrialBalanceDto> {
    return this.database.inOperator(actor, (tx) => drawUpBalance(tx, actor.operatorId, this.clock.now()));
  }

  /** The same of one airframe, up to an instant, span by span: the one that does not add up is where to look. */
  @Get('airframes/:id')
  ofAirframe(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() { upTo }: AirframeBalanceQueryDto,
  ): Promise<AirframeBalanceDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const airframe = orNotFound(
        await tx.airframe.findUnique({
          where: { operatorId_id: { operatorId, id } },
          select: { id: true, registration: true },
        }),
        'airframe',
      );
      return drawUpOfAirframe(tx, {
        ...{ operatorId, airframe, now: this.clock.now() },
        upTo: upTo === undefined ? null : momentOf(upTo),
      });
    });
  }
}
