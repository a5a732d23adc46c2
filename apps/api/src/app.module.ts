import { Module } from '@nestjs/common';
import { ChangesModule } from './features/changes/changes.module.js';
import { PeopleModule } from './features/people/people.module.js';
import { PlacementsModule } from './features/placements/placements.module.js';
import { SessionModule } from './features/session/session.module.js';
import { PlatformModule } from './platform/platform.module.js';
import { JournalModule } from './records/journal/journal.module.js';
import { RecordsModule } from './records/records.module.js';

@Module({
  imports: [
    PlatformModule,
    // the system of record
    JournalModule,
    RecordsModule,
    // the jobs people do
    ChangesModule,
    PeopleModule,
    PlacementsModule,
    SessionModule,
  ],
})
export class AppModule {}
