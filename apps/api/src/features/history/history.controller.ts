import { Controller, Get, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { Id } from '../../platform/http/id.js';
import { HistoryDto } from './history.dto.js';
import { HistoryService } from './history.service.js';

const JSON_TYPE = 'application/json; charset=utf-8';

@ApiTags('history')
@Controller()
export class HistoryController {
  constructor(private readonly history: HistoryService) {}

  /** Everything that happened to an airframe, in order, with totals and the journal entry behind each line. */
  @Get('airframes/:id/history')
  @ApiOkResponse({ type: HistoryDto })
  async ofAirframe(@CurrentActor() actor: Actor, @Id() id: string): Promise<StreamableFile> {
    return new StreamableFile(await this.history.stream(actor, { kind: 'airframe', id }), {
      type: JSON_TYPE,
    });
  }

  /** Everything that happened to an engine, a module or a part, in order. */
  @Get('components/:id/history')
  @ApiOkResponse({ type: HistoryDto })
  async ofComponent(@CurrentActor() actor: Actor, @Id() id: string): Promise<StreamableFile> {
    return new StreamableFile(await this.history.stream(actor, { kind: 'component', id }), {
      type: JSON_TYPE,
    });
  }
}
