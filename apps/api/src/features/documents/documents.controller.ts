import { Body, Controller, Get, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { DocumentBegunDto, DocumentDto, DocumentsQueryDto, NewDocumentDto } from './documents.dto.js';
import { DocumentsService } from './documents.service.js';

@ApiTags('documents')
@Controller('documents')
export class DocumentsController {
  constructor(private readonly documents: DocumentsService) {}

  /** Begins to prepare a printed document; the job's result names it. */
  @Post()
  begin(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewDocumentDto,
  ): Promise<DocumentBegunDto> {
    return this.documents.begin(actor, act, asked);
  }

  /** The documents prepared of an airframe or a component. */
  @Get()
  list(@CurrentActor() actor: Actor, @Query() { subjectId }: DocumentsQueryDto): Promise<DocumentDto[]> {
    return this.documents.list(actor, subjectId);
  }

  /** The file of a document. */
  @Get(':id')
  @ApiOkResponse({
    description: 'The file.',
    content: { 'application/pdf': { schema: { type: 'string', format: 'binary' } } },
  })
  async file(@CurrentActor() actor: Actor, @Id() id: string): Promise<StreamableFile> {
    const { fileName, bytes } = await this.documents.file(actor, id);
    return new StreamableFile(bytes, {
      type: 'application/pdf',
      disposition: `attachment; filename="${fileName}"`,
      length: bytes.length,
    });
  }
}
