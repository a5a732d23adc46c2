import { Module } from '@nestjs/common';
import { DueExportService } from './due-export.service.js';
import { DueListController } from './due-list.controller.js';
import { DueListService } from './due-list.service.js';

@Module({ controllers: [DueListController], providers: [DueListService, DueExportService] })
export class DueListModule {}
