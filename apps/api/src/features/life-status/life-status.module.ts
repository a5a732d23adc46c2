import { Module } from '@nestjs/common';
import { LifeStatusController } from './life-status.controller.js';
import { LifeStatusService } from './life-status.service.js';

@Module({ controllers: [LifeStatusController], providers: [LifeStatusService] })
export class LifeStatusModule {}
