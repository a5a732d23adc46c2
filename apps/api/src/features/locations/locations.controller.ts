import { Body, Controller, Get, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { LocationDto, NewLocationDto } from './location.dto.js';
import { LocationsService } from './locations.service.js';

@ApiTags('locations')
@Controller('locations')
export class LocationsController {
  constructor(private readonly locations: LocationsService) {}

  /** All locations. */
  @Get()
  list(@CurrentActor() actor: Actor): Promise<LocationDto[]> {
    return this.locations.list(actor);
  }

  /** Adds a location. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewLocationDto,
  ): Promise<LocationDto> {
    return this.locations.add(actor, act, asked);
  }
}
