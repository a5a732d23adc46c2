import { Module } from '@nestjs/common';
import { ReleaseCheck } from './release-check.js';
import { ReleaseController } from './release.controller.js';
import { ReleaseService } from './release.service.js';

@Module({ controllers: [ReleaseController], providers: [ReleaseService, ReleaseCheck] })
export class ReleaseModule {}
