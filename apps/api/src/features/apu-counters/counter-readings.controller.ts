import { Body, Controller, Get, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { CounterCorrectionsService } from './counter-corrections.service.js';
import {
  CorrectReadingDto,
  CounterAnswerDto,
  CounterReadingsDto,
  NewReadingDto,
  NewReplacementDto,
  VoidReadingDto,
} from './counter-reading.dto.js';
import { CounterReadingsService } from './counter-readings.service.js';

@ApiTags('counters of auxiliary power units')
@Controller()
export class CounterReadingsController {
  constructor(
    private readonly readings: CounterReadingsService,
    private readonly corrections: CounterCorrectionsService,
  ) {}

  /** All readings of an auxiliary power unit's counter, the newest first, voided ones too. */
  @Get('components/:id/counter-readings')
  list(@CurrentActor() actor: Actor, @Id() id: string): Promise<CounterReadingsDto> {
    return this.readings.list(actor, id);
  }

  /** Records what the counter showed between installation and removal. */
  @Post('components/:id/counter-readings')
  read(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewReadingDto,
  ): Promise<CounterAnswerDto> {
    return this.readings.read(actor, act, id, asked);
  }

  /** Records that the counter was replaced by another one. */
  @Post('components/:id/counter-replacements')
  replace(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewReplacementDto,
  ): Promise<CounterAnswerDto> {
    return this.readings.replace(actor, act, id, asked);
  }

  /** Voids a reading that was recorded wrongly. */
  @Post('counter-readings/:id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidReadingDto,
  ): Promise<CounterAnswerDto> {
    return this.corrections.void(actor, act, id, reason);
  }

  /** Voids a reading and enters it again as it was. */
  @Post('counter-readings/:id/correct')
  correct(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: CorrectReadingDto,
  ): Promise<CounterAnswerDto> {
    return this.corrections.correct(actor, act, id, asked);
  }
}
