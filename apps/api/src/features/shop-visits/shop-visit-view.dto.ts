import { CountersDto } from '../../platform/http/counters.dto.js';
import { ObjectionDto } from '../../platform/http/objection.dto.js';

/** The component of a visit. */
export class VisitingComponentDto {
  id!: string;
  kind!: 'engine' | 'module' | 'part' | 'pod' | 'apu';
  partNumber!: string;
  serialNumber!: string;
  description!: string;
  engineModelId!: string | null;
}

/** A visit in a list. */
export class ShopVisitRowDto {
  id!: string;
  component!: VisitingComponentDto;
  shop!: string;
  orderReference!: string;
  workscope!: string;
  sentAt!: string;
  returnedAt!: string | null;
  /** The report and the certificate it was returned with. */
  report!: string | null;
  certificate!: string | null;
  status!: 'in-shop' | 'returned' | 'voided';
}

/** A page of visits, the last sent first. */
export class ShopVisitsPageDto {
  rows!: ShopVisitRowDto[];
  next!: string | null;
}

/** What is left of a limited part. */
export class BuiltLifeDto {
  kind!: 'limited' | 'unsubstantiated' | 'not-authorised' | 'not-limited';
  remainingCycles!: number | null;
  remainingMinutes!: number | null;
  remainingDays!: number | null;
  reason!: string | null;
}

/** A component in a build. */
export class BuiltComponentDto {
  componentId!: string;
  kind!: string;
  partNumber!: string;
  serialNumber!: string;
  description!: string;
  lifeLimited!: boolean;
  sinceNew!: CountersDto;
  life!: BuiltLifeDto | null;
}

/** A place in a build, and what was in it. */
export class BuiltSlotDto {
  slotId!: string;
  name!: string;
  parentId!: string;
  parentSerial!: string;
  depth!: number;
  component!: BuiltComponentDto | null;
}

/** A requirement held against something in a build. */
export class BuiltRequirementDto {
  requirementId!: string;
  code!: string;
  title!: string;
  kind!: string;
  revision!: string;
  componentId!: string | null;
  subject!: string;
  status!: string;
  remaining!: number | null;
  governing!: 'minutes' | 'cycles' | 'days' | 'months' | null;
  lastDoneOn!: string | null;
}

/** Everything that was in a component at an instant. */
export class BuildStandardDto {
  at!: string;
  ratingCode!: string | null;
  sinceNew!: CountersDto;
  sinceOverhaul!: CountersDto | null;
  sinceShopVisit!: CountersDto | null;
  sinceRepair!: CountersDto | null;
  life!: BuiltLifeDto | null;
  slots!: BuiltSlotDto[];
  requirements!: BuiltRequirementDto[];
}

/** A rating that changed. */
export class RatingDifferenceDto {
  before!: string | null;
  after!: string | null;
}

/** A place whose component differs. */
export class SlotDifferenceDto {
  slotId!: string;
  name!: string;
  parentSerial!: string;
  before!: BuiltComponentDto | null;
  after!: BuiltComponentDto | null;
}

/** A counter of the component itself that differs. */
export class CounterDifferenceDto {
  counter!: 'sinceNew' | 'sinceOverhaul' | 'sinceShopVisit' | 'sinceRepair';
  before!: CountersDto | null;
  after!: CountersDto | null;
}

/** A requirement whose state differs. */
export class RequirementDifferenceDto {
  requirementId!: string;
  code!: string;
  subject!: string;
  before!: BuiltRequirementDto | null;
  after!: BuiltRequirementDto | null;
}

/** The fewest cycles left among its limited parts. */
export class TightestDifferenceDto {
  before!: number | null;
  after!: number | null;
}

/** What the visit changed. */
export class BuildDifferenceDto {
  rating!: RatingDifferenceDto | null;
  slots!: SlotDifferenceDto[];
  counters!: CounterDifferenceDto[];
  requirements!: RequirementDifferenceDto[];
  tightestCycles!: TightestDifferenceDto;
}

/** A change the shop made at one place. */
export class ShopChangeDto {
  id!: string;
  slotId!: string;
  slotName!: string;
  parentSerial!: string;
  outgoing!: VisitingComponentDto | null;
  incoming!: VisitingComponentDto | null;
  removedTo!: string | null;
  at!: string;
  reason!: string;
  certificate!: string | null;
  disposition!: string | null;
  dispositionText!: string | null;
}

/** A counter the visit reset. */
export class VisitResetDto {
  id!: string;
  componentId!: string;
  serialNumber!: string;
  kind!: 'overhaul' | 'shop-visit' | 'repair';
  evidence!: string;
}

/** A return from the shop. */
export class ShopReturnDto {
  id!: string;
  returnedAt!: string;
  location!: string;
  report!: string;
  certificate!: string | null;
  workDone!: string;
  changes!: ShopChangeDto[];
  resets!: VisitResetDto[];
  /** What broke a rule and was recorded with it. */
  objections!: ObjectionDto[];
  /** The build standard as it was kept then. */
  build!: BuildStandardDto;
  recordedBy!: string | null;
  recordedAt!: string;
}

/** A visit in full: what went, what came back, and what changed. */
export class ShopVisitDto {
  id!: string;
  component!: VisitingComponentDto;
  shop!: string;
  orderReference!: string;
  workscope!: string;
  sentAt!: string;
  status!: 'in-shop' | 'returned' | 'voided';
  voidReason!: string | null;
  /** The build standard as it was kept at dispatch. */
  build!: BuildStandardDto;
  returned!: ShopReturnDto | null;
  difference!: BuildDifferenceDto | null;
  recordedBy!: string | null;
  recordedAt!: string;
}
