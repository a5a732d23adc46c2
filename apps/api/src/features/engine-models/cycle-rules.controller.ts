import { Body, Controller, Get, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { CycleRulesService } from './cycle-rules.service.js';
import { NewRuleRevisionDto, RuleRevisionsDto, VoidRuleDto } from './engine-model.dto.js';

@ApiTags('engine models')
@Controller()
export class CycleRulesController {
  constructor(private readonly rules: CycleRulesService) {}

  /** All revisions of a model's cycle rules, the newest first, voided ones too. */
  @Get('engine-models/:id/cycle-rules')
  list(@CurrentActor() actor: Actor, @Id() id: string): Promise<RuleRevisionsDto> {
    return this.rules.list(actor, id);
  }

  /** Records a revision that counts from a day on; what was flown from then on is counted again. */
  @Post('engine-models/:id/cycle-rules')
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewRuleRevisionDto,
  ): Promise<RuleRevisionsDto> {
    return this.rules.add(actor, act, id, asked);
  }

  /** Voids a revision that was recorded wrongly. */
  @Post('cycle-rules/:id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidRuleDto,
  ): Promise<RuleRevisionsDto> {
    return this.rules.void(actor, act, id, reason);
  }
}
