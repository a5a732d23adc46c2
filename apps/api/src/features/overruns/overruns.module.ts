import { Module } from '@nestjs/common';
import { OverrunsController } from './overruns.controller.js';
import { OverrunsService } from './overruns.service.js';

@Module({ controllers: [OverrunsController], providers: [OverrunsService] })
export class OverrunsModule {}
