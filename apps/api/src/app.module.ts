import { Module } from '@nestjs/common';
import { PeopleModule } from './features/people/people.module.js';
import { SessionModule } from './features/session/session.module.js';
import { PlatformModule } from './platform/platform.module.js';
import { JournalModule } from './records/journal/journal.module.js';

@Module({
  imports: [
    PlatformModule,
    // the system of record
    JournalModule,
    // the jobs people do
    PeopleModule,
    SessionModule,
  ],
})
export class AppModule {}
