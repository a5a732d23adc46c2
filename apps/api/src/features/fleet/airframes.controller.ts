import { Body, Controller, Get, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { AirframeDto, NewAirframeDto } from './airframe.dto.js';
import { AirframesService } from './airframes.service.js';

@ApiTags('fleet')
@Controller('airframes')
export class AirframesController {
  constructor(private readonly airframes: AirframesService) {}

  /** All airframes, with their positions and what they have flown. */
  @Get()
  list(@CurrentActor() actor: Actor): Promise<AirframeDto[]> {
    return this.airframes.list(actor);
  }

  /** One airframe. */
  @Get(':id')
  get(@CurrentActor() actor: Actor, @Id() id: string): Promise<AirframeDto> {
    return this.airframes.get(actor, id);
  }

  /** Adds an airframe; its positions, slots and clocks come with it. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewAirframeDto,
  ): Promise<AirframeDto> {
    return this.airframes.add(actor, act, asked);
  }
}
