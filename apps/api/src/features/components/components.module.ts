import { Module } from '@nestjs/common';
import { ComponentReader } from './component-reader.js';
import { ComponentsController } from './components.controller.js';
import { ComponentsService } from './components.service.js';

@Module({ controllers: [ComponentsController], providers: [ComponentsService, ComponentReader] })
export class ComponentsModule {}
