import { Module } from '@nestjs/common';
import { EngineModelsController } from './engine-models.controller.js';
import { EngineModelsService } from './engine-models.service.js';
import { LifeLimitsController } from './life-limits.controller.js';
import { LifeLimitsService } from './life-limits.service.js';

@Module({
  controllers: [EngineModelsController, LifeLimitsController],
  providers: [EngineModelsService, LifeLimitsService],
})
export class EngineModelsModule {}
