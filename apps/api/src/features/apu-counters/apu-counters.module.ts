import { Module } from '@nestjs/common';
import { CounterCorrectionsService } from './counter-corrections.service.js';
import { CounterReadingsController } from './counter-readings.controller.js';
import { CounterReadingsService } from './counter-readings.service.js';

@Module({
  controllers: [CounterReadingsController],
  providers: [CounterReadingsService, CounterCorrectionsService],
})
export class ApuCountersModule {}
