import { Body, Controller, HttpCode, Param, ParseUUIDPipe, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { PlacedStayDto, PlacementDto, VoidedStayDto, VoidReasonDto } from './placement.dto.js';
import { PlacementsService } from './placements.service.js';

@ApiTags('placements')
@Controller('placements')
export class PlacementsController {
  constructor(private readonly placements: PlacementsService) {}

  /** Puts a component into a slot or to a location; its open stay at a location ends then. */
  @Post()
  place(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() body: PlacementDto,
  ): Promise<PlacedStayDto> {
    return this.placements.place(actor, act, body);
  }

  /** Voids a stay that was recorded wrongly. */
  @Post(':stayId/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Param('stayId', ParseUUIDPipe) stayId: string,
    @Body() body: VoidReasonDto,
  ): Promise<VoidedStayDto> {
    return this.placements.void(actor, act, stayId, body.reason);
  }
}
