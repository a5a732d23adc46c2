import { Controller, Get, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { JobDto } from './jobs.dto.js';
import { JobsService } from './jobs.service.js';

@ApiTags('jobs')
@Controller('jobs')
export class JobsController {
  constructor(private readonly jobs: JobsService) {}

  /** How far a job is, and what it made. */
  @Get(':id')
  get(@CurrentActor() actor: Actor, @Id() id: string): Promise<JobDto> {
    return this.jobs.get(actor, id);
  }

  /** Asks a job to end early. */
  @Post(':id/cancel')
  @HttpCode(200)
  cancel(@CurrentActor() actor: Actor, @ActKey() act: ActRequest, @Id() id: string): Promise<JobDto> {
    return this.jobs.cancel(actor, act, id);
  }
}
