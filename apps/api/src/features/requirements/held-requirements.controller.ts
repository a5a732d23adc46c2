import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { Id } from '../../platform/http/id.js';
import { HeldQueryDto } from './requirement.dto.js';
import { RequirementStatusDto } from './requirement-status.dto.js';
import { RequirementsService } from './requirements.service.js';

@ApiTags('requirements')
@Controller()
export class HeldRequirementsController {
  constructor(private readonly requirements: RequirementsService) {}

  /** What is held against an airframe, its positions and all that hangs on it, the most pressing first. */
  @Get('airframes/:id/requirements')
  onAirframe(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() { notApplicable }: HeldQueryDto,
  ): Promise<RequirementStatusDto[]> {
    return this.requirements.statusesOn(actor, { airframeId: id }, notApplicable === 'true');
  }

  /** What is held against a component and all beneath it, the most pressing first. */
  @Get('components/:id/requirements')
  onComponent(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() { notApplicable }: HeldQueryDto,
  ): Promise<RequirementStatusDto[]> {
    return this.requirements.statusesOn(actor, { componentId: id }, notApplicable === 'true');
  }
}
