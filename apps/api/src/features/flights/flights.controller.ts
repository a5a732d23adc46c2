import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { CorrectFlightDto, FlightsQueryDto, NewFlightsDto, VoidFlightDto } from './flight.dto.js';
import { FlightCorrectionsService } from './flight-corrections.service.js';
import { FlightsAnswerDto, FlightsPageDto } from './flight-view.dto.js';
import { FlightsService } from './flights.service.js';

@ApiTags('flights')
@Controller()
export class FlightsController {
  constructor(
    private readonly flights: FlightsService,
    private readonly corrections: FlightCorrectionsService,
  ) {}

  /** Flights of an airframe, the newest first. */
  @Get('airframes/:id/flights')
  page(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Query() query: FlightsQueryDto,
  ): Promise<FlightsPageDto> {
    return this.flights.page(actor, id, query);
  }

  /** Logs flights of an airframe, all or none; says which limits are newly reached or passed. */
  @Post('airframes/:id/flights')
  log(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewFlightsDto,
  ): Promise<FlightsAnswerDto> {
    return this.flights.logFlights(actor, act, id, asked);
  }

  /** Voids a flight. */
  @Post('flights/:id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidFlightDto,
  ): Promise<FlightsAnswerDto> {
    return this.corrections.void(actor, act, { id, reason });
  }

  /** Voids a flight and enters it again as it was; what came or went by its log page moves along. */
  @Post('flights/:id/correct')
  correct(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: CorrectFlightDto,
  ): Promise<FlightsAnswerDto> {
    return this.corrections.correct(actor, act, id, asked);
  }
}
