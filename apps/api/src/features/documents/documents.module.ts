import { Module } from '@nestjs/common';
import { CertificateDocument } from './certificate-document.js';
import { DocumentsController } from './documents.controller.js';
import { DocumentsService } from './documents.service.js';
import { HistoryDocument } from './history-document.js';
import { LifeStatusDocument } from './life-status-document.js';

@Module({
  controllers: [DocumentsController],
  providers: [DocumentsService, HistoryDocument, CertificateDocument, LifeStatusDocument],
})
export class DocumentsModule {}
