import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { Database } from '../../platform/database/database.js';
import { Clock } from '../../platform/time/clock.js';
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
}
