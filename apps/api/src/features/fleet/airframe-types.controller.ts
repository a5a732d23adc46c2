import { Body, Controller, Get, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { AirframeTypeDto, NewAirframeTypeDto } from './airframe-type.dto.js';
import { AirframeTypesService } from './airframe-types.service.js';

@ApiTags('fleet')
@Controller('airframe-types')
export class AirframeTypesController {
  constructor(private readonly types: AirframeTypesService) {}

  /** All types of airframe, with their positions. */
  @Get()
  list(@CurrentActor() actor: Actor): Promise<AirframeTypeDto[]> {
    return this.types.list(actor);
  }

  /** Adds a type of airframe with its positions. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewAirframeTypeDto,
  ): Promise<AirframeTypeDto> {
    return this.types.add(actor, act, asked);
  }
}
