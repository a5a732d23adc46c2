import { Module } from '@nestjs/common';
import { AccomplishmentsController } from './accomplishments/accomplishments.controller.js';
import { AccomplishmentsService } from './accomplishments/accomplishments.service.js';
import { AssessmentsController } from './assessments/assessments.controller.js';
import { AssessmentsService } from './assessments/assessments.service.js';
import { HeldRequirementsController } from './held-requirements.controller.js';
import { HeldSubjects } from './held-subjects.js';
import { OccurrencesController } from './occurrences/occurrences.controller.js';
import { OccurrencesService } from './occurrences/occurrences.service.js';
import { RequirementsController } from './requirements.controller.js';
import { RequirementsService } from './requirements.service.js';
import { VariationsController } from './variations/variations.controller.js';
import { VariationsService } from './variations/variations.service.js';

@Module({
  controllers: [
    RequirementsController,
    HeldRequirementsController,
    AccomplishmentsController,
    AssessmentsController,
    VariationsController,
    OccurrencesController,
  ],
  providers: [
    HeldSubjects,
    RequirementsService,
    AccomplishmentsService,
    AssessmentsService,
    VariationsService,
    OccurrencesService,
  ],
})
export class RequirementsModule {}
