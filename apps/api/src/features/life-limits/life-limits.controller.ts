import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import {
  AcceptLimitsDto,
  LifeLimitDto,
  LifeLimitsQueryDto,
  LimitRevisionDto,
  NewLifeLimitDto,
  VoidLifeLimitDto,
} from './life-limit.dto.js';
import { LifeLimitsService } from './life-limits.service.js';
import { AcceptedLimitsDto, LimitPreviewDto } from './limit-preview.dto.js';
import { LimitRevisionsService } from './limit-revisions.service.js';

@ApiTags('engine models')
@Controller('life-limits')
export class LifeLimitsController {
  constructor(
    private readonly limits: LifeLimitsService,
    private readonly revisions: LimitRevisionsService,
  ) {}

  /** Life limits of all parts, of one part number, or of one model; voided ones are marked. */
  @Get()
  list(@CurrentActor() actor: Actor, @Query() query: LifeLimitsQueryDto): Promise<LifeLimitDto[]> {
    return this.limits.list(actor, query);
  }

  /** Records a life limit from a document's revision. The newest revision that is effective counts. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewLifeLimitDto,
  ): Promise<LifeLimitDto> {
    return this.limits.add(actor, act, asked);
  }

  /** What a new revision of a manual, or a directive, would change, serial by serial; nothing is stored. */
  @Post('preview')
  @HttpCode(200)
  preview(@CurrentActor() actor: Actor, @Body() asked: LimitRevisionDto): Promise<LimitPreviewDto> {
    return this.revisions.preview(actor, asked);
  }

  /** Accepts a new revision, or a directive, as its preview was seen: all its rows in one act. */
  @Post('accept')
  accept(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: AcceptLimitsDto,
  ): Promise<AcceptedLimitsDto> {
    return this.revisions.accept(actor, act, asked);
  }

  /** Voids a life limit that was recorded wrongly. */
  @Post(':id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidLifeLimitDto,
  ): Promise<LifeLimitDto> {
    return this.limits.void(actor, act, { id, reason });
  }
}
