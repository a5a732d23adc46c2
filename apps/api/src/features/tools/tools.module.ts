import { Module } from '@nestjs/common';
import { CalibrationsService } from './calibrations.service.js';
import { ToolsController } from './tools.controller.js';
import { ToolsService } from './tools.service.js';

@Module({ controllers: [ToolsController], providers: [ToolsService, CalibrationsService] })
export class ToolsModule {}
