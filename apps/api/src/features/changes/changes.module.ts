import { Module } from '@nestjs/common';
import { ChangesController } from './changes.controller.js';
import { ChangesService } from './changes.service.js';
import { PreviewChange } from './preview-change.js';

@Module({ controllers: [ChangesController], providers: [ChangesService, PreviewChange] })
export class ChangesModule {}
