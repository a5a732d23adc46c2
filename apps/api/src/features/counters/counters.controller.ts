import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { Id } from '../../platform/http/id.js';
import { CounterMomentDto, FlightsOfLineDto } from './counter-moment.dto.js';
import { CountersService } from './counters.service.js';
import { AirframeCountersDto, ExplainedCountersDto, FlightsOfLinePageDto } from './counters-view.dto.js';

@ApiTags('counters')
@Controller()
export class CountersController {
  constructor(private readonly counters: CountersService) {}

  /** Every counter of a component at a moment: its total, what set it to nothing, and the lines that add up to it. */
  @Get('components/:id/counters')
  ofComponent(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() moment: CounterMomentDto,
  ): Promise<ExplainedCountersDto> {
    return this.counters.ofComponent(actor, id, moment);
  }

  /** What an airframe and its positions have run by a moment, and the lines that add up to it. */
  @Get('airframes/:id/counters')
  ofAirframe(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() moment: CounterMomentDto,
  ): Promise<AirframeCountersDto> {
    return this.counters.ofAirframe(actor, id, moment);
  }

  /** The flights of one line of a counter, and what its clock counted of each. */
  @Get('counter-flights')
  flights(@CurrentActor() actor: Actor, @Query() query: FlightsOfLineDto): Promise<FlightsOfLinePageDto> {
    return this.counters.flights(actor, query);
  }
}
