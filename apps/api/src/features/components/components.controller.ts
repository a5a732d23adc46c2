import { Body, Controller, Get, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { AsOfQueryDto, ComponentsQueryDto, NewComponentDto } from './component.dto.js';
import { ComponentDto, ComponentsPageDto, StayDto } from './component-view.dto.js';
import { ComponentsService } from './components.service.js';

@ApiTags('components')
@Controller('components')
export class ComponentsController {
  constructor(private readonly components: ComponentsService) {}

  /** Components by serial number; search finds parts of serial and part numbers. */
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: ComponentsQueryDto): Promise<ComponentsPageDto> {
    return this.components.page(actor, query);
  }

  /** One component with its counters, life, limiter and what is in it, now or as it was. */
  @Get(':id')
  get(@CurrentActor() actor: Actor, @Id() id: string, @Query() query: AsOfQueryDto): Promise<ComponentDto> {
    return this.components.get(actor, id, query);
  }

  /** Everywhere a component was, voided stays marked. */
  @Get(':id/places')
  places(@CurrentActor() actor: Actor, @Id() id: string): Promise<StayDto[]> {
    return this.components.places(actor, id);
  }

  /** Adds a component; the places in it come with it. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewComponentDto,
  ): Promise<ComponentDto> {
    return this.components.add(actor, act, asked);
  }
}
