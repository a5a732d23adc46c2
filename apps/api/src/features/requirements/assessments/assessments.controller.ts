import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../../platform/access/actor.js';
import { CurrentActor } from '../../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../../platform/http/act-key.js';
import { Id } from '../../../platform/http/id.js';
import { AssessmentDto } from '../met-view.dto.js';
import { VoidRequirementDto } from '../requirement.dto.js';
import { NewAssessmentDto } from './assessment.dto.js';
import { AssessmentsService } from './assessments.service.js';

@ApiTags('requirements')
@Controller('assessments')
export class AssessmentsController {
  constructor(private readonly assessments: AssessmentsService) {}

  /** Records whether a revision of a requirement applies to one subject, to a type or model, or to all it may be for. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewAssessmentDto,
  ): Promise<AssessmentDto> {
    return this.assessments.add(actor, act, asked);
  }

  /** Voids an assessment that was recorded wrongly. */
  @Post(':id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidRequirementDto,
  ): Promise<AssessmentDto> {
    return this.assessments.void(actor, act, { id, reason });
  }
}
