import { Module } from '@nestjs/common';
import { CycleRulesController } from './cycle-rules.controller.js';
import { CycleRulesService } from './cycle-rules.service.js';
import { EngineModelsController } from './engine-models.controller.js';
import { EngineModelsService } from './engine-models.service.js';

@Module({
  controllers: [EngineModelsController, CycleRulesController],
  providers: [EngineModelsService, CycleRulesService],
})
export class EngineModelsModule {}
