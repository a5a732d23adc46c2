import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { SparesPageDto, SparesQueryDto } from './spare.dto.js';
import { SparesService } from './spares.service.js';

@ApiTags('components')
@Controller('spares')
export class SparesController {
  constructor(private readonly spares: SparesService) {}

  /** What is installed nowhere: fit to install, or why not, and what is left in it. */
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: SparesQueryDto): Promise<SparesPageDto> {
    return this.spares.page(actor, query);
  }
}
