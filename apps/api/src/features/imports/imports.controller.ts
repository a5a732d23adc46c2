import { Body, Controller, Get, Header, HttpCode, Post, Query } from '@nestjs/common';
import { ApiBody, ApiConsumes, ApiProduces, ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { IfMatch } from '../../platform/http/if-match.js';
import {
  ImportBegunDto,
  ImportDto,
  ImportsPageDto,
  ImportsQueryDto,
  NewImportDto,
  NewImportQueryDto,
} from './import.dto.js';
import { ImportBodyPipe, type SentFile } from './import-body.pipe.js';
import { ImportsService } from './imports.service.js';

@ApiTags('imports')
@Controller('imports')
export class ImportsController {
  constructor(private readonly imports: ImportsService) {}

  /** Files brought in, the newest first. */
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: ImportsQueryDto): Promise<ImportsPageDto> {
    return this.imports.page(actor, query);
  }

  /** One file with what its check found. */
  @Get(':id')
  get(@CurrentActor() actor: Actor, @Id() id: string): Promise<ImportDto> {
    return this.imports.get(actor, id);
  }

  /** The errors of a file as CSV. */
  @Get(':id/errors.csv')
  @ApiProduces('text/csv')
  @Header('content-type', 'text/csv; charset=utf-8')
  @Header('content-disposition', 'attachment; filename="errors.csv"')
  errors(@CurrentActor() actor: Actor, @Id() id: string): Promise<string> {
    return this.imports.errors(actor, id);
  }

  /** Takes a file in and begins its check: JSON with its text, or the file itself as text/csv with its name in the address. */
  @Post()
  @HttpCode(202)
  @ApiConsumes('application/json', 'text/csv')
  @ApiBody({ type: NewImportDto })
  take(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Query() query: NewImportQueryDto,
    @Body(ImportBodyPipe) { content, fileName }: SentFile,
  ): Promise<ImportBegunDto> {
    return this.imports.take(actor, act, { fileName: fileName ?? query.fileName ?? 'flights.csv', content });
  }

  /** Begins to apply a checked file, all of it or nothing. */
  @Post(':id/apply')
  @HttpCode(202)
  apply(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @IfMatch() seen: number,
    @Id() id: string,
  ): Promise<ImportBegunDto> {
    return this.imports.apply(actor, act, { id, seen });
  }

  /** Ends the work under way on a file; nothing of it stays. */
  @Post(':id/cancel')
  @HttpCode(202)
  cancel(@CurrentActor() actor: Actor, @ActKey() act: ActRequest, @Id() id: string): Promise<ImportDto> {
    return this.imports.cancel(actor, act, id);
  }
}
