import { Module } from '@nestjs/common';
import { ApplyJob } from './apply-job.js';
import { CheckJob } from './check-job.js';
import { ImportsController } from './imports.controller.js';
import { ImportsService } from './imports.service.js';

@Module({ controllers: [ImportsController], providers: [ImportsService, CheckJob, ApplyJob] })
export class ImportsModule {}
