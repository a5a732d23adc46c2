import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { DuePageDto, DueQueryDto } from './due-list.dto.js';
import { DueListService } from './due-list.service.js';

@ApiTags('due')
@Controller('due-points')
export class DueListController {
  constructor(private readonly dueList: DueListService) {}

  /** What falls due, the most urgent first. */
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: DueQueryDto): Promise<DuePageDto> {
    return this.dueList.page(actor, query);
  }
}
