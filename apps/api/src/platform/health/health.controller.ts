import { Controller, Get } from '@nestjs/common';
import { StartUpChecks } from '../database/start-up-checks.js';
import { refuse } from '../problems/refusal.error.js';
import { HealthDto } from './health.dto.js';

@Controller('health')
export class HealthController {
  constructor(private readonly checks: StartUpChecks) {}

  /** The process answers. */
  @Get('live')
  live(): HealthDto {
    return { status: 'live' };
  }

  /** The database answers too, and its migrations are applied. Refuses: UNAVAILABLE. */
  @Get('ready')
  async ready(): Promise<HealthDto> {
    if ((await this.checks.missing()) !== null) refuse({ code: 'UNAVAILABLE', retryAfterSeconds: 5 });
    return { status: 'ready' };
  }
}
