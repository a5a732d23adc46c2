import { Module } from '@nestjs/common';
import { ReleaseController } from './release.controller.js';
import { ReleaseService } from './release.service.js';
import { ReleaseCheck } from './release-check.js';

@Module({ controllers: [ReleaseController], providers: [ReleaseService, ReleaseCheck] })
export class ReleaseModule {}
