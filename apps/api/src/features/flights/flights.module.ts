import { Module } from '@nestjs/common';
import { BoundaryInFlight } from './boundary-in-flight.js';
import { FlightCorrectionsService } from './flight-corrections.service.js';
import { FlightLog } from './flight-log.js';
import { FlightsController } from './flights.controller.js';
import { FlightsService } from './flights.service.js';
import { GapNotesController } from './gap-notes.controller.js';
import { GapNotesService } from './gap-notes.service.js';

@Module({
  controllers: [FlightsController, GapNotesController],
  providers: [FlightsService, FlightCorrectionsService, FlightLog, BoundaryInFlight, GapNotesService],
})
export class FlightsModule {}
