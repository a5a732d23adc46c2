import { Body, Controller, Get, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import {
  GroundRunAnswerDto,
  GroundRunsPageDto,
  GroundRunsQueryDto,
  NewCellRunDto,
  NewTestCellDto,
  TestCellDto,
} from './ground-run.dto.js';
import { GroundRunsService } from './ground-runs.service.js';
import { TestCellsService } from './test-cells.service.js';

@ApiTags('ground runs')
@Controller('test-cells')
export class TestCellsController {
  constructor(
    private readonly cells: TestCellsService,
    private readonly runs: GroundRunsService,
  ) {}

  /** All test cells with the engines in them. */
  @Get()
  list(@CurrentActor() actor: Actor): Promise<TestCellDto[]> {
    return this.cells.list(actor);
  }

  /** Adds a test cell. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewTestCellDto,
  ): Promise<TestCellDto> {
    return this.cells.add(actor, act, asked);
  }

  /** Runs in a test cell, the newest first. */
  @Get(':id/runs')
  page(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() query: GroundRunsQueryDto,
  ): Promise<GroundRunsPageDto> {
    return this.runs.inCell(actor, id, query);
  }

  /** Records a run of the engine in a test cell. */
  @Post(':id/runs')
  record(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewCellRunDto,
  ): Promise<GroundRunAnswerDto> {
    return this.runs.ofCell(actor, act, id, asked);
  }
}
