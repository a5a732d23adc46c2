import { Module } from '@nestjs/common';
import { BoundaryInFlight } from './boundary-in-flight.js';
import { FlightCorrectionsService } from './flight-corrections.service.js';
import { FlightLog } from './flight-log.js';
import { FlightsController } from './flights.controller.js';
import { FlightsService } from './flights.service.js';

@Module({
  controllers: [FlightsController],
  providers: [FlightsService, FlightCorrectionsService, FlightLog, BoundaryInFlight],
})
export class FlightsModule {}
