import { Module } from '@nestjs/common';
import { GroundRunsController } from './ground-runs.controller.js';
import { GroundRunsService } from './ground-runs.service.js';
import { TestCellsController } from './test-cells.controller.js';
import { TestCellsService } from './test-cells.service.js';

@Module({
  controllers: [GroundRunsController, TestCellsController],
  providers: [GroundRunsService, TestCellsService],
})
export class GroundRunsModule {}
