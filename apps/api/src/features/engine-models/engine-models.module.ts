import { Module } from '@nestjs/common';
import { EngineModelsController } from './engine-models.controller.js';
import { EngineModelsService } from './engine-models.service.js';

@Module({
  controllers: [EngineModelsController],
  providers: [EngineModelsService],
})
export class EngineModelsModule {}
