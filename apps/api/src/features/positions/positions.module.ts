import { Module } from '@nestjs/common';
import { PositionsController } from './positions.controller.js';
import { PositionsService } from './positions.service.js';

@Module({ controllers: [PositionsController], providers: [PositionsService] })
export class PositionsModule {}
