import { Module } from '@nestjs/common';
import { ServiceabilityController } from './serviceability.controller.js';
import { ServiceabilityService } from './serviceability.service.js';

@Module({ controllers: [ServiceabilityController], providers: [ServiceabilityService] })
export class ServiceabilityModule {}
