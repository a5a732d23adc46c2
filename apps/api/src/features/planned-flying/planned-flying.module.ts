import { Module } from '@nestjs/common';
import { PlannedFlightsService } from './planned-flights.service.js';
import { PlannedFlyingController } from './planned-flying.controller.js';
import { PlannedRatesService } from './planned-rates.service.js';
import { ReadinessService } from './readiness.service.js';

@Module({
  controllers: [PlannedFlyingController],
  providers: [PlannedFlightsService, PlannedRatesService, ReadinessService],
})
export class PlannedFlyingModule {}
