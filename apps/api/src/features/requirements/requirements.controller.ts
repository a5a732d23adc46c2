import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import {
  HeldQueryDto,
  NewRequirementDto,
  RequirementsQueryDto,
  VoidRequirementDto,
} from './requirement.dto.js';
import { RequirementViewDto } from './requirement-page.dto.js';
import { RequirementDto } from './requirement-view.dto.js';
import { RequirementsService } from './requirements.service.js';

@ApiTags('requirements')
@Controller('requirements')
export class RequirementsController {
  constructor(private readonly requirements: RequirementsService) {}

  /** All requirements, or those in force; voided ones are marked. */
  @Get()
  list(@CurrentActor() actor: Actor, @Query() { inForce }: RequirementsQueryDto): Promise<RequirementDto[]> {
    return this.requirements.list(actor, inForce === 'true');
  }

  /** One requirement with all it is held against, and when it was met. */
  @Get(':id')
  get(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() { notApplicable }: HeldQueryDto,
  ): Promise<RequirementViewDto> {
    return this.requirements.get(actor, id, notApplicable === 'true');
  }

  /** Records a requirement from a document's revision. The newest revision of a code counts. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewRequirementDto,
  ): Promise<RequirementDto> {
    return this.requirements.add(actor, act, asked);
  }

  /** Voids a requirement that was recorded wrongly. */
  @Post(':id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidRequirementDto,
  ): Promise<RequirementDto> {
    return this.requirements.void(actor, act, { id, reason });
  }
}
