import { Module } from '@nestjs/common';
import { ComponentFactsController } from './component-facts.controller.js';
import { ComponentFactsService } from './component-facts.service.js';
import { FactRecords } from './fact-records.js';
import { OpeningsController } from './openings.controller.js';
import { OpeningsService } from './openings.service.js';
import { VoidFactsService } from './void-facts.service.js';

@Module({
  controllers: [OpeningsController, ComponentFactsController],
  providers: [OpeningsService, ComponentFactsService, FactRecords, VoidFactsService],
})
export class OpeningsModule {}
