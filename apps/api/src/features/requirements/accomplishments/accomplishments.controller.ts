import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../../platform/access/actor.js';
import { CurrentActor } from '../../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../../platform/http/act-key.js';
import { Id } from '../../../platform/http/id.js';
import { AccomplishmentDto } from '../met-view.dto.js';
import { VoidRequirementDto } from '../requirement.dto.js';
import { CorrectedAccomplishmentDto, NewAccomplishmentDto } from './accomplishment.dto.js';
import { AccomplishmentsService } from './accomplishments.service.js';

@ApiTags('requirements')
@Controller('accomplishments')
export class AccomplishmentsController {
  constructor(private readonly accomplishments: AccomplishmentsService) {}

  /** Records by hand that a requirement was met, with what proves it: for work done before or elsewhere. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewAccomplishmentDto,
  ): Promise<AccomplishmentDto> {
    return this.accomplishments.add(actor, act, asked);
  }

  /** Voids an accomplishment and records what it should have said, in one act; what is due follows. */
  @Post(':id/correct')
  correct(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: CorrectedAccomplishmentDto,
  ): Promise<AccomplishmentDto> {
    return this.accomplishments.correct(actor, act, id, asked);
  }

  /** Voids an accomplishment that was recorded wrongly. */
  @Post(':id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidRequirementDto,
  ): Promise<AccomplishmentDto> {
    return this.accomplishments.void(actor, act, { id, reason });
  }
}
