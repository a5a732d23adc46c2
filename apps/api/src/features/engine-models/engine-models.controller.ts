import { Body, Controller, Get, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { EngineModelDto, NewEngineModelDto } from './engine-model.dto.js';
import { EngineModelsService } from './engine-models.service.js';

@ApiTags('engine models')
@Controller('engine-models')
export class EngineModelsController {
  constructor(private readonly models: EngineModelsService) {}

  /** All models, with their ratings and cycle rules. */
  @Get()
  list(@CurrentActor() actor: Actor): Promise<EngineModelDto[]> {
    return this.models.list(actor);
  }

  /** Adds a model with its ratings and cycle rules. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewEngineModelDto,
  ): Promise<EngineModelDto> {
    return this.models.add(actor, act, asked);
  }
}
