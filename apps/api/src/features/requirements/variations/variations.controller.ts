import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../../platform/access/actor.js';
import { CurrentActor } from '../../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../../platform/http/act-key.js';
import { Id } from '../../../platform/http/id.js';
import { VariationDto } from '../met-view.dto.js';
import { VoidRequirementDto } from '../requirement.dto.js';
import { NewVariationDto } from './variation.dto.js';
import { VariationsService } from './variations.service.js';

@ApiTags('requirements')
@Controller('variations')
export class VariationsController {
  constructor(private readonly variations: VariationsService) {}

  /** Records an approved variation of what is due now of a requirement on one subject: one time, within what is permitted. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewVariationDto,
  ): Promise<VariationDto> {
    return this.variations.add(actor, act, asked);
  }

  /** Voids a variation that was recorded wrongly, or withdrawn. */
  @Post(':id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidRequirementDto,
  ): Promise<VariationDto> {
    return this.variations.void(actor, act, { id, reason });
  }
}
