import { Module } from '@nestjs/common';
import { SparesController } from './spares.controller.js';
import { SparesService } from './spares.service.js';

@Module({ controllers: [SparesController], providers: [SparesService] })
export class SparesModule {}
