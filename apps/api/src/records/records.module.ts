import { Global, Module } from '@nestjs/common';
import { Authorisations } from './authorisations/authorisations.js';
import { BuildStandards } from './builds/build-standards.js';
import { SlotChanges } from './changes/slot-changes.js';
import { Consequences } from './consequences/consequences.js';
import { DuePoints } from './due-points/due-points.js';
import { Projections } from './due-points/projections.js';
import { Explanations } from './explanations/explanations.js';
import { History } from './history/history.js';
import { EngineSnapshots } from './lives/engine-snapshots.js';
import { Lives } from './lives/lives.js';
import { LifeSheets } from './lives/sheet/life-sheets.js';
import { Overruns } from './overruns/overruns.js';
import { PlannedFlying } from './planning/planned-flying.js';
import { RequirementPoints } from './requirements/requirement-points.js';
import { Requirements } from './requirements/requirements.js';
import { Standings } from './requirements/standings.js';
import { Stays } from './stays/stays.js';
import { Structure } from './stays/structure.js';
import { ToolRecords } from './tools/tool-records.js';
import { Counters } from './usage/counters.js';
import { Exposures } from './usage/exposures.js';
import { Use } from './usage/use.js';

const RECORDS = [
  Structure,
  Stays,
  Use,
  Exposures,
  Counters,
  Explanations,
  Overruns,
  Consequences,
  Lives,
  LifeSheets,
  EngineSnapshots,
  Standings,
  RequirementPoints,
  DuePoints,
  Projections,
  Requirements,
  PlannedFlying,
  History,
  SlotChanges,
  BuildStandards,
  Authorisations,
  ToolRecords,
];

/** The system of record: what every feature writes through and reads from. */
@Global()
@Module({ providers: RECORDS, exports: RECORDS })
export class RecordsModule {}
