import { Module } from '@nestjs/common';
import { LifeLimitsController } from './life-limits.controller.js';
import { LifeLimitsService } from './life-limits.service.js';
import { LimitRevisionsService } from './limit-revisions.service.js';
import { LimitsInEffect } from './limits-in-effect.js';

@Module({
  controllers: [LifeLimitsController],
  providers: [LifeLimitsService, LimitRevisionsService, LimitsInEffect],
})
export class LifeLimitsModule {}
