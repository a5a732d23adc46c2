import { Body, Controller, Get, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { CalibrationsService } from './calibrations.service.js';
import { NewCalibrationDto, NewToolDto, ToolDto, ToolViewDto, VoidCalibrationDto } from './tool.dto.js';
import { ToolsService } from './tools.service.js';

@ApiTags('tools')
@Controller()
export class ToolsController {
  constructor(
    private readonly tools: ToolsService,
    private readonly calibrations: CalibrationsService,
  ) {}

  /** All tools with their range and whether their calibration is in date, by serial number. */
  @Get('tools')
  list(@CurrentActor() actor: Actor): Promise<ToolDto[]> {
    return this.tools.list(actor);
  }

  /** Registers a tool. */
  @Post('tools')
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewToolDto,
  ): Promise<ToolViewDto> {
    return this.tools.add(actor, act, asked);
  }

  /** A tool with its calibrations and where it was used. */
  @Get('tools/:id')
  get(@CurrentActor() actor: Actor, @Id() id: string): Promise<ToolViewDto> {
    return this.tools.get(actor, id);
  }

  /** Records a calibration. The newest one counts from the day it was made. */
  @Post('tools/:id/calibrations')
  calibrate(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewCalibrationDto,
  ): Promise<ToolViewDto> {
    return this.calibrations.add(actor, act, id, asked);
  }

  /** Voids a calibration that was recorded wrongly; what was accepted by it stays as it was judged. */
  @Post('tool-calibrations/:id/void')
  @HttpCode(200)
  voidCalibration(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidCalibrationDto,
  ): Promise<ToolViewDto> {
    return this.calibrations.void(actor, act, { id, reason });
  }
}
