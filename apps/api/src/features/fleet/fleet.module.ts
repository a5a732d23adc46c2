import { Module } from '@nestjs/common';
import { AirframeTypesController } from './airframe-types.controller.js';
import { AirframeTypesService } from './airframe-types.service.js';
import { AirframesController } from './airframes.controller.js';
import { AirframesService } from './airframes.service.js';
import { RuleSetsController } from './rule-sets.controller.js';

@Module({
  controllers: [RuleSetsController, AirframeTypesController, AirframesController],
  providers: [AirframeTypesService, AirframesService],
})
export class FleetModule {}
