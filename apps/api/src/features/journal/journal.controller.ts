import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { JournalPageDto, JournalQueryDto } from './journal.dto.js';
import { JournalReader } from './journal-reader.js';

@ApiTags('journal')
@Controller('journal')
export class JournalController {
  constructor(private readonly journal: JournalReader) {}

  /** Entries of the journal with their hashes, in order. */
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: JournalQueryDto): Promise<JournalPageDto> {
    return this.journal.page(actor, query);
  }
}
