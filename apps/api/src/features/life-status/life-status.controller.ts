import { Controller, Get, Query, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { Id } from '../../platform/http/id.js';
import { LifeSheetDto } from '../../records/lives/wire/life-sheet.dto.js';
import { LifeStatusQueryDto } from './life-status.dto.js';
import { LifeStatusService } from './life-status.service.js';

@ApiTags('components')
@Controller('components')
export class LifeStatusController {
  constructor(private readonly status: LifeStatusService) {}

  /** The status of the life-limited parts in a component, now or as it was. */
  @Get(':id/life-status')
  get(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() { at }: LifeStatusQueryDto,
  ): Promise<LifeSheetDto> {
    return this.status.get(actor, id, at);
  }

  /** The same as comma-separated text. */
  @Get(':id/life-status.csv')
  @ApiOkResponse({
    description: 'The sheet.',
    content: { 'text/csv': { schema: { type: 'string' } } },
  })
  async csv(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() { at }: LifeStatusQueryDto,
  ): Promise<StreamableFile> {
    const { fileName, text } = await this.status.csv(actor, id, at);
    return new StreamableFile(Buffer.from(text, 'utf8'), {
      type: 'text/csv; charset=utf-8',
      disposition: `attachment; filename="${fileName}"`,
    });
  }
}
