import { Module } from '@nestjs/common';
import { TrialBalanceController } from './trial-balance.controller.js';

@Module({ controllers: [TrialBalanceController] })
export class TrialBalanceModule {}
