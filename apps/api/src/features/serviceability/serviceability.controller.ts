import { Body, Controller, Get, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import {
  NewPreservationDto,
  NewTagDto,
  PreservationDto,
  ServiceabilityDto,
  TagDto,
  VoidKeepingDto,
} from './serviceability.dto.js';
import { ServiceabilityService } from './serviceability.service.js';

@ApiTags('components')
@Controller()
export class ServiceabilityController {
  constructor(private readonly serviceability: ServiceabilityService) {}

  /** Whether a component may be fitted as its tags, its shop and its place say, with all tags and preservations. */
  @Get('components/:id/serviceability')
  of(@CurrentActor() actor: Actor, @Id() id: string): Promise<ServiceabilityDto> {
    return this.serviceability.of(actor, id);
  }

  /** Records a tag: serviceable, unserviceable or quarantine. */
  @Post('serviceability-tags')
  tag(@CurrentActor() actor: Actor, @ActKey() act: ActRequest, @Body() asked: NewTagDto): Promise<TagDto> {
    return this.serviceability.tag(actor, act, asked);
  }

  /** Voids a tag. */
  @Post('serviceability-tags/:id/void')
  @HttpCode(200)
  voidTag(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidKeepingDto,
  ): Promise<TagDto> {
    return this.serviceability.voidTag(actor, act, id, reason);
  }

  /** Records how a component was preserved. */
  @Post('preservations')
  preserve(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewPreservationDto,
  ): Promise<PreservationDto> {
    return this.serviceability.preserve(actor, act, asked);
  }

  /** Voids a preservation. */
  @Post('preservations/:id/void')
  @HttpCode(200)
  voidPreservation(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidKeepingDto,
  ): Promise<PreservationDto> {
    return this.serviceability.voidPreservation(actor, act, id, reason);
  }
}
