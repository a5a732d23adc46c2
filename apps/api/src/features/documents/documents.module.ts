import { Module } from '@nestjs/common';
import { DocumentsController } from './documents.controller.js';
import { DocumentsService } from './documents.service.js';
import { HistoryDocument } from './history-document.js';

@Module({ controllers: [DocumentsController], providers: [DocumentsService, HistoryDocument] })
export class DocumentsModule {}
