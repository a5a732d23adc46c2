import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { Id } from '../../platform/http/id.js';
import { BoardRowDto, PositionsDto, PositionsQueryDto } from './positions.dto.js';
import { PositionsService } from './positions.service.js';

@ApiTags('positions')
@Controller()
export class PositionsController {
  constructor(private readonly positions: PositionsService) {}

  /** Every airframe with what is at its positions, counters and tightest parts. */
  @Get('board')
  board(@CurrentActor() actor: Actor): Promise<BoardRowDto[]> {
    return this.positions.board(actor);
  }

  /** What is, or was, at the positions of one airframe. */
  @Get('airframes/:id/positions')
  ofAirframe(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() { at }: PositionsQueryDto,
  ): Promise<PositionsDto> {
    return this.positions.ofAirframe(actor, id, at);
  }
}
