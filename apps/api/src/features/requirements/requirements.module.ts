import { Module } from '@nestjs/common';
import { AccomplishmentsController } from './accomplishments.controller.js';
import { AccomplishmentsService } from './accomplishments.service.js';
import { HeldRequirementsController } from './held-requirements.controller.js';
import { RequirementsController } from './requirements.controller.js';
import { RequirementsService } from './requirements.service.js';

@Module({
  controllers: [RequirementsController, HeldRequirementsController, AccomplishmentsController],
  providers: [RequirementsService, AccomplishmentsService],
})
export class RequirementsModule {}
