import { Body, Controller, Get, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import {
  FlightsPlannedDto,
  NewPlannedFlightsDto,
  PlannedFlightDto,
  PlannedFlightsDto,
  VoidPlanDto,
} from './planned-flight.dto.js';
import { PlannedFlightsService } from './planned-flights.service.js';
import { NewPlannedRateDto, PlannedRateDto } from './planned-rate.dto.js';
import { PlannedRatesService } from './planned-rates.service.js';
import { AskedReadinessDto, ReadinessDto } from './readiness.dto.js';
import { ReadinessService } from './readiness.service.js';

@ApiTags('planned flying')
@Controller()
export class PlannedFlyingController {
  constructor(
    private readonly flights: PlannedFlightsService,
    private readonly rates: PlannedRatesService,
    private readonly readiness: ReadinessService,
  ) {}

  /** The flights an airframe is planned to make. */
  @Get('airframes/:id/planned-flights')
  planned(@CurrentActor() actor: Actor, @Id() id: string): Promise<PlannedFlightsDto> {
    return this.flights.list(actor, id);
  }

  /** Plans flights, beside those planned already or in their place. */
  @Post('airframes/:id/planned-flights')
  plan(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewPlannedFlightsDto,
  ): Promise<FlightsPlannedDto> {
    return this.flights.add(actor, act, id, asked);
  }

  /** Voids a planned flight. */
  @Post('planned-flights/:id/void')
  @HttpCode(200)
  voidFlight(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidPlanDto,
  ): Promise<PlannedFlightDto> {
    return this.flights.void(actor, act, { id, reason });
  }

  /** What an airframe is planned to fly, the newest rate first. */
  @Get('airframes/:id/planned-rates')
  plannedRates(@CurrentActor() actor: Actor, @Id() id: string): Promise<PlannedRateDto[]> {
    return this.rates.list(actor, id);
  }

  /** Records what an airframe is planned to fly from a day on. */
  @Post('airframes/:id/planned-rates')
  planRate(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewPlannedRateDto,
  ): Promise<PlannedRateDto> {
    return this.rates.add(actor, act, id, asked);
  }

  /** Voids a planned rate. */
  @Post('planned-rates/:id/void')
  @HttpCode(200)
  voidRate(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidPlanDto,
  ): Promise<PlannedRateDto> {
    return this.rates.void(actor, act, { id, reason });
  }

  /** Which of the flights to come may be made, and what they reach. Changes nothing. */
  @Post('airframes/:id/readiness')
  @HttpCode(200)
  ready(
    @CurrentActor() actor: Actor,
    @Id() id: string,
    @Body() asked: AskedReadinessDto,
  ): Promise<ReadinessDto> {
    return this.readiness.of(actor, id, asked);
  }
}
