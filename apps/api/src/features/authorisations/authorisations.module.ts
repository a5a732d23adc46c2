import { Module } from '@nestjs/common';
import { AuthorisationsController } from './authorisations.controller.js';
import { AuthorisationsService } from './authorisations.service.js';

@Module({ controllers: [AuthorisationsController], providers: [AuthorisationsService] })
export class AuthorisationsModule {}
