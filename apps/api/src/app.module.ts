import { Module } from '@nestjs/common';
import { ApuCountersModule } from './features/apu-counters/apu-counters.module.js';
import { AuthorisationsModule } from './features/authorisations/authorisations.module.js';
import { ChangesModule } from './features/changes/changes.module.js';
import { ComponentsModule } from './features/components/components.module.js';
import { CountersModule } from './features/counters/counters.module.js';
import { DocumentsModule } from './features/documents/documents.module.js';
import { DueListModule } from './features/due-list/due-list.module.js';
import { EngineModelsModule } from './features/engine-models/engine-models.module.js';
import { FleetModule } from './features/fleet/fleet.module.js';
import { FlightsModule } from './features/flights/flights.module.js';
import { GroundRunsModule } from './features/ground-runs/ground-runs.module.js';
import { HistoryModule } from './features/history/history.module.js';
import { ImportsModule } from './features/imports/imports.module.js';
import { JobsModule } from './features/jobs/jobs.module.js';
import { JournalReadingModule } from './features/journal/journal-reading.module.js';
import { LifeLimitsModule } from './features/life-limits/life-limits.module.js';
import { LifeStatusModule } from './features/life-status/life-status.module.js';
import { LocationsModule } from './features/locations/locations.module.js';
import { OpeningsModule } from './features/openings/openings.module.js';
import { OverrunsModule } from './features/overruns/overruns.module.js';
import { PackagesModule } from './features/packages/packages.module.js';
import { PeopleModule } from './features/people/people.module.js';
import { PlacementsModule } from './features/placements/placements.module.js';
import { PlannedFlyingModule } from './features/planned-flying/planned-flying.module.js';
import { PositionsModule } from './features/positions/positions.module.js';
import { ProceduresModule } from './features/procedures/procedures.module.js';
import { ReleaseModule } from './features/release/release.module.js';
import { RequirementsModule } from './features/requirements/requirements.module.js';
import { ServiceabilityModule } from './features/serviceability/serviceability.module.js';
import { SessionModule } from './features/session/session.module.js';
import { ShopVisitsModule } from './features/shop-visits/shop-visits.module.js';
import { SigningModule } from './features/signing/signing.module.js';
import { SparesModule } from './features/spares/spares.module.js';
import { ToolsModule } from './features/tools/tools.module.js';
import { TrialBalanceModule } from './features/trial-balance/trial-balance.module.js';
import { WorkStepsModule } from './features/work-steps/work-steps.module.js';
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
    AuthorisationsModule,
    ToolsModule,
    ChangesModule,
    PeopleModule,
    PlacementsModule,
    CountersModule,
    DocumentsModule,
    DueListModule,
    HistoryModule,
    JobsModule,
    JournalReadingModule,
    PackagesModule,
    ProceduresModule,
    WorkStepsModule,
    PlannedFlyingModule,
    PositionsModule,
    ReleaseModule,
    RequirementsModule,
    TrialBalanceModule,
    SessionModule,
    SigningModule,
    ShopVisitsModule,
    ServiceabilityModule,
    SparesModule,
    OpeningsModule,
    OverrunsModule,
    LocationsModule,
    ImportsModule,
    FlightsModule,
    GroundRunsModule,
    ApuCountersModule,
    FleetModule,
    EngineModelsModule,
    LifeLimitsModule,
    LifeStatusModule,
    ComponentsModule,
  ],
})
export class AppModule {}
