import { Body, Controller, Get, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../../platform/access/actor.js';
import { CurrentActor } from '../../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../../platform/http/act-key.js';
import { Id } from '../../../platform/http/id.js';
import { VoidRequirementDto } from '../requirement.dto.js';
import { NewOccurrenceDto, OccurrenceDto } from './occurrence.dto.js';
import { OccurrencesService } from './occurrences.service.js';

@ApiTags('requirements')
@Controller()
export class OccurrencesController {
  constructor(private readonly occurrences: OccurrencesService) {}

  /** The events of an airframe that no other record tells, the latest first; voided ones are marked. */
  @Get('airframes/:id/occurrences')
  list(@CurrentActor() actor: Actor, @Id() id: string): Promise<OccurrenceDto[]> {
    return this.occurrences.list(actor, id);
  }

  /** Records an event of an airframe, such as its return to the main base; what is due at it follows. */
  @Post('occurrences')
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewOccurrenceDto,
  ): Promise<OccurrenceDto> {
    return this.occurrences.add(actor, act, asked);
  }

  /** Voids an event that was recorded wrongly. */
  @Post('occurrences/:id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidRequirementDto,
  ): Promise<OccurrenceDto> {
    return this.occurrences.void(actor, act, { id, reason });
  }
}
