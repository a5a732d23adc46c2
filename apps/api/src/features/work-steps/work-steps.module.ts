import { Module } from '@nestjs/common';
import { AddStepService } from './add-step.service.js';
import { EntriesService } from './entries.service.js';
import { JudgeCapture } from './judge-capture.js';
import { MyWorkService } from './my-work.service.js';
import { PhotosService } from './photos.service.js';
import { WorkService } from './work.service.js';
import { WorkStepsController } from './work-steps.controller.js';

@Module({
  controllers: [WorkStepsController],
  providers: [WorkService, AddStepService, EntriesService, JudgeCapture, PhotosService, MyWorkService],
})
export class WorkStepsModule {}
