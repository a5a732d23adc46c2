import { CountersDto } from '../../platform/http/counters.dto.js';
import { LifeDto, LimiterDto } from '../../records/lives/wire/life.dto.js';

/** Where a component is. */
export class PlaceDto {
  kind!: 'slot' | 'location' | 'none';
  /** In words, to be shown. */
  label!: string;
  airframeId!: string | null;
  positionNumber!: number | null;
  parentId!: string | null;
  parentSerial!: string | null;
  slotName!: string | null;
  since!: string | null;
  precision!: 'minute' | 'page' | 'day' | null;
}

/** The counters of a component; null where nothing reset them. */
export class ComponentCountersDto {
  sinceNew!: CountersDto;
  sinceOverhaul!: CountersDto | null;
  sinceShopVisit!: CountersDto | null;
  sinceRepair!: CountersDto | null;
  sinceInstalled!: CountersDto | null;
}

/** The counters of a component inside another. */
export class PartCountersDto {
  sinceNew!: CountersDto;
}

/** A component inside another, with what is inside it. */
export class PartDto {
  id!: string;
  kind!: 'engine' | 'module' | 'part' | 'pod' | 'apu';
  partNumber!: string;
  serialNumber!: string;
  description!: string;
  lifeLimited!: boolean;
  counters!: PartCountersDto;
  life!: LifeDto | null;
  slots!: SlotDto[];
}

/** A place in a component, and what is in it. */
export class SlotDto {
  id!: string;
  name!: string;
  kind!: 'module' | 'part';
  lifeLimited!: boolean;
  component!: PartDto | null;
}

/** A span the records of a component do not cover. */
export class GapDto {
  id!: string;
  from!: string;
  to!: string;
  note!: string;
  accepted!: boolean;
}

/** One component with all that is computed of it. */
export class ComponentDto {
  id!: string;
  kind!: 'engine' | 'module' | 'part' | 'pod' | 'apu';
  maker!: string;
  partNumber!: string;
  serialNumber!: string;
  description!: string;
  engineModelId!: string | null;
  /** Maker and designation of the model. */
  engineModel!: string | null;
  lifeLimited!: boolean;
  podClock!: 'airframe' | 'position' | null;
  owner!: string;
  lessor!: string | null;
  manufacturedOn!: string | null;
  /** As recorded from its papers, where these records do not show it. */
  firstInstalledOn!: string | null;
  version!: number;
  place!: PlaceDto;
  /** The rating an engine runs at. */
  ratingCode!: string | null;
  counters!: ComponentCountersDto;
  /** Whether everything its counters and its life rest on is known. */
  verified!: boolean;
  gaps!: GapDto[];
  life!: LifeDto | null;
  /** The tightest part in cycles; in hours where no cycles limit, else by date. */
  limiter!: LimiterDto | null;
  /** The part whose life is projected to end first. */
  limiterByDate!: LimiterDto | null;
  slots!: SlotDto[];
}

/** A component in a list. */
export class ComponentRowDto {
  id!: string;
  kind!: 'engine' | 'module' | 'part' | 'pod' | 'apu';
  maker!: string;
  partNumber!: string;
  serialNumber!: string;
  description!: string;
  lifeLimited!: boolean;
  engineModelId!: string | null;
  place!: PlaceDto;
}

/** A page of components. */
export class ComponentsPageDto {
  rows!: ComponentRowDto[];
  /** What to send as `after` for the next page; null on the last. */
  next!: string | null;
}

/** Where a component was over one span of time. */
export class StayDto {
  id!: string;
  kind!: 'slot' | 'location';
  label!: string;
  slotId!: string | null;
  locationId!: string | null;
  from!: string;
  fromPrecision!: 'minute' | 'page' | 'day';
  /** What was typed where the beginning is no instant: a log page or a date. */
  fromText!: string | null;
  to!: string | null;
  toPrecision!: 'minute' | 'page' | 'day' | null;
  toText!: string | null;
  reason!: string | null;
  endReason!: string | null;
  voided!: boolean;
  voidReason!: string | null;
}
