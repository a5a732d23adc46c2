import { Global, Module } from '@nestjs/common';
import { APP_FILTER, APP_GUARD, APP_INTERCEPTOR, APP_PIPE } from '@nestjs/core';
import { AccessGuard } from './access/access.guard.js';
import { AttemptThrottle } from './access/attempt-throttle.js';
import { Holders } from './access/holders.js';
import { Passwords } from './access/passwords.js';
import { Sessions } from './access/sessions.js';
import { Signers } from './access/signers.js';
import { Config } from './config/config.js';
import { Database } from './database/database.js';
import { StartUpChecks } from './database/start-up-checks.js';
import { HealthController } from './health/health.controller.js';
import { Acts } from './http/acts.js';
import { EntityTagInterceptor } from './http/entity-tag.interceptor.js';
import { JobRun } from './jobs/job-run.js';
import { Jobs } from './jobs/jobs.js';
import { Worker } from './jobs/worker.js';
import { ProblemFilter } from './problems/problem.filter.js';
import { validationPipe } from './problems/validation.js';
import { Clock } from './time/clock.js';

const OFFERED = [Database, Acts, Jobs, Clock, Sessions, Passwords, Signers, AttemptThrottle];

/** The plumbing, offered to every other module. */
@Global()
@Module({
  controllers: [HealthController],
  providers: [
    ...OFFERED,
    { provide: Config, useFactory: () => Config.from() },
    Holders,
    JobRun,
    StartUpChecks,
    Worker,
    { provide: APP_GUARD, useClass: AccessGuard },
    { provide: APP_FILTER, useClass: ProblemFilter },
    { provide: APP_INTERCEPTOR, useClass: EntityTagInterceptor },
    { provide: APP_PIPE, useValue: validationPipe },
  ],
  exports: [...OFFERED, Config],
})
export class PlatformModule {}
