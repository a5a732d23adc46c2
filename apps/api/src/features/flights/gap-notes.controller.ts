import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { GapNoteDto, NewGapNoteDto, VoidGapNoteDto } from './gap-note.dto.js';
import { GapNotesService } from './gap-notes.service.js';

@ApiTags('flights')
@Controller()
export class GapNotesController {
  constructor(private readonly notes: GapNotesService) {}

  /** Records why a gap before a flight hides none. */
  @Post('flights/:id/gap-notes')
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewGapNoteDto,
  ): Promise<GapNoteDto> {
    return this.notes.add(actor, act, id, asked);
  }

  /** Voids such a note: the gap blocks releases again. */
  @Post('gap-notes/:id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidGapNoteDto,
  ): Promise<GapNoteDto> {
    return this.notes.void(actor, act, { id, reason });
  }
}
