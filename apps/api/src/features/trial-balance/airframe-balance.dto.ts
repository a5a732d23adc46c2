import { IsOptional } from 'class-validator';
import { IsInstantText } from '../../platform/http/field-forms.js';
import { CountsDto } from './trial-balance.dto.js';

/** Up to when the accounts are added up. */
export class AirframeBalanceQueryDto {
  /** 'YYYY-MM-DDTHH:MMZ', UTC; left out, it is now. */
  @IsOptional()
  @IsInstantText()
  upTo?: string;
}

/** One engine's stay at a position, or a time it was empty. */
export class BalanceSpanDto {
  /** Null: since the airframe's first flight. */
  from!: string | null;
  /** Null: it goes on. */
  to!: string | null;
  /** Null: no engine was there. */
  componentId!: string | null;
  serialNumber!: string | null;
  /** What the airframe flew then. */
  flown!: CountsDto;
  /** The last flight in it, to read on from; null when none is. */
  lastFlightId!: string | null;
  /** What was run there on the ground then and counts. */
  runs!: CountsDto;
  /** What the engine there took, or what passed the empty position. */
  taken!: CountsDto;
  /** What the engine there did not run. */
  notRunning!: CountsDto;
  /** Flown and run less all the rest; anything but zero was lost or made up in this span. */
  difference!: CountsDto;
}

/** The accounts of one position, with the spans they are of. */
export class PositionBalanceDto {
  positionId!: string;
  positionNumber!: number;
  flown!: CountsDto;
  runs!: CountsDto;
  onEngines!: CountsDto;
  empty!: CountsDto;
  notRunning!: CountsDto;
  difference!: CountsDto;
  /** In order of time; what took use without having been there comes last. */
  spans!: BalanceSpanDto[];
}

/** The trial balance of one airframe up to an instant. */
export class AirframeBalanceDto {
  airframeId!: string;
  registration!: string;
  upTo!: string;
  /** True when the difference of every span is zero. */
  balanced!: boolean;
  positions!: PositionBalanceDto[];
}
