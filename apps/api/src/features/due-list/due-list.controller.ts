import { Controller, Get, Query, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { DueExportService } from './due-export.service.js';
import { DuePageDto, DueTotalsDto } from './due-list.dto.js';
import { DueListService } from './due-list.service.js';
import { DueExportQueryDto, DueFilterDto, DueQueryDto } from './due-query.dto.js';

@ApiTags('due')
@Controller()
export class DueListController {
  constructor(
    private readonly dueList: DueListService,
    private readonly exports: DueExportService,
  ) {}

  /** What falls due, the most urgent first unless asked otherwise. */
  @Get('due-points')
  page(@CurrentActor() actor: Actor, @Query() query: DueQueryDto): Promise<DuePageDto> {
    return this.dueList.page(actor, query);
  }

  /** How many there are of each status: in all, and by the filters. What is past is told even where a filter leaves it out. */
  @Get('due-points/totals')
  totals(@CurrentActor() actor: Actor, @Query() query: DueFilterDto): Promise<DueTotalsDto> {
    return this.dueList.totals(actor, query);
  }

  /** The whole filtered list as comma-separated text. */
  @Get('due-points.csv')
  @ApiOkResponse({ description: 'The list.', content: { 'text/csv': { schema: { type: 'string' } } } })
  async csv(@CurrentActor() actor: Actor, @Query() query: DueExportQueryDto): Promise<StreamableFile> {
    return new StreamableFile(await this.exports.stream(actor, query, 'csv'), {
      type: 'text/csv; charset=utf-8',
      disposition: 'attachment; filename="due-list.csv"',
    });
  }

  /** The whole filtered list, a line of JSON for each row. */
  @Get('due-points.ndjson')
  @ApiOkResponse({
    description: 'The list: a DueRowDto on each line.',
    content: { 'application/x-ndjson': { schema: { type: 'string' } } },
  })
  async lines(@CurrentActor() actor: Actor, @Query() query: DueExportQueryDto): Promise<StreamableFile> {
    return new StreamableFile(await this.exports.stream(actor, query, 'ndjson'), {
      type: 'application/x-ndjson; charset=utf-8',
      disposition: 'attachment; filename="due-list.ndjson"',
    });
  }
}
