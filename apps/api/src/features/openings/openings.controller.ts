import { Body, Controller, Get, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { NewOpeningDto, OpeningDto, RecordedOpeningDto, VoidFactDto } from './opening.dto.js';
import { OpeningsService } from './openings.service.js';

@ApiTags('openings')
@Controller()
export class OpeningsController {
  constructor(private readonly openings: OpeningsService) {}

  /** The opening balances of an airframe, voided ones marked. */
  @Get('airframes/:id/openings')
  ofAirframe(@CurrentActor() actor: Actor, @Id() id: string): Promise<OpeningDto[]> {
    return this.openings.ofAirframe(actor, id);
  }

  /** Records a balance brought in from older records. */
  @Post('openings')
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewOpeningDto,
  ): Promise<RecordedOpeningDto> {
    return this.openings.add(actor, act, asked);
  }

  /** Voids an opening balance, so that another can be entered. */
  @Post('openings/:id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidFactDto,
  ): Promise<RecordedOpeningDto> {
    return this.openings.void(actor, act, { id, reason });
  }
}
