import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import {
  GroundRunAnswerDto,
  GroundRunsPageDto,
  GroundRunsQueryDto,
  NewGroundRunDto,
  VoidRunDto,
} from './ground-run.dto.js';
import { GroundRunsService } from './ground-runs.service.js';

@ApiTags('ground runs')
@Controller()
export class GroundRunsController {
  constructor(private readonly runs: GroundRunsService) {}

  /** Runs of an airframe's engines on the ground, the newest first. */
  @Get('airframes/:id/ground-runs')
  page(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() query: GroundRunsQueryDto,
  ): Promise<GroundRunsPageDto> {
    return this.runs.ofAirframe(actor, id, query);
  }

  /** Records a run of an engine at a position on the ground. */
  @Post('airframes/:id/ground-runs')
  record(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewGroundRunDto,
  ): Promise<GroundRunAnswerDto> {
    return this.runs.atPosition(actor, act, id, asked);
  }

  /** Voids a run, at a position or in a test cell. */
  @Post('ground-runs/:id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidRunDto,
  ): Promise<GroundRunAnswerDto> {
    return this.runs.void(actor, act, id, reason);
  }
}
