import { Body, Controller, Get, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import {
  ComponentFactsDto,
  NewGapAcceptanceDto,
  NewRatingChangeDto,
  NewResetDto,
  NewTraceGapDto,
  RecordedGapAcceptanceDto,
  RecordedRatingChangeDto,
  RecordedResetDto,
  RecordedTraceGapDto,
} from './component-facts.dto.js';
import { ComponentFactsService } from './component-facts.service.js';
import { VoidFactDto } from './opening.dto.js';
import { VoidFactsService } from './void-facts.service.js';
import { VoidedFactDto } from './voided-fact.dto.js';

@ApiTags('components')
@Controller()
export class ComponentFactsController {
  constructor(
    private readonly facts: ComponentFactsService,
    private readonly voiding: VoidFactsService,
  ) {}

  /** Openings, gaps, acceptances, overhauls, shop visits and ratings of a component, voided ones marked. */
  @Get('components/:id/facts')
  of(@CurrentActor() actor: Actor, @Id() id: string): Promise<ComponentFactsDto> {
    return this.facts.of(actor, id);
  }

  /** Records a span that the records of a component do not cover. */
  @Post('trace-gaps')
  addGap(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewTraceGapDto,
  ): Promise<RecordedTraceGapDto> {
    return this.facts.addGap(actor, act, asked);
  }

  /** Records that the worst case was accepted for what is unknown. */
  @Post('gap-acceptances')
  acceptGap(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewGapAcceptanceDto,
  ): Promise<RecordedGapAcceptanceDto> {
    return this.facts.acceptGap(actor, act, asked);
  }

  /** Records an overhaul or shop visit. */
  @Post('resets')
  addReset(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewResetDto,
  ): Promise<RecordedResetDto> {
    return this.facts.addReset(actor, act, asked);
  }

  /** Records from when an engine runs at a rating. */
  @Post('rating-changes')
  changeRating(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewRatingChangeDto,
  ): Promise<RecordedRatingChangeDto> {
    return this.facts.changeRating(actor, act, asked);
  }

  /** Voids a gap that is none. */
  @Post('trace-gaps/:id/void')
  @HttpCode(200)
  voidGap(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidFactDto,
  ): Promise<VoidedFactDto> {
    return this.voiding.void(actor, act, 'trace-gap', { id, reason });
  }

  /** Voids an acceptance. */
  @Post('gap-acceptances/:id/void')
  @HttpCode(200)
  voidAcceptance(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidFactDto,
  ): Promise<VoidedFactDto> {
    return this.voiding.void(actor, act, 'gap-acceptance', { id, reason });
  }

  /** Voids an overhaul or shop visit. */
  @Post('resets/:id/void')
  @HttpCode(200)
  voidReset(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidFactDto,
  ): Promise<VoidedFactDto> {
    return this.voiding.void(actor, act, 'reset', { id, reason });
  }

  /** Voids a change of rating. */
  @Post('rating-changes/:id/void')
  @HttpCode(200)
  voidRating(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidFactDto,
  ): Promise<VoidedFactDto> {
    return this.voiding.void(actor, act, 'rating-change', { id, reason });
  }
}
