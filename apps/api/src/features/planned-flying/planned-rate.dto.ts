import { IsInt, Max, MaxLength, Min } from 'class-validator';
import { IsDayText, IsText } from '../../platform/http/field-forms.js';

/** What an airframe is planned to fly from a day on. */
export class NewPlannedRateDto {
  @IsDayText()
  fromOn!: string;

  /** The days the amounts are of: 7 for a week. */
  @IsInt()
  @Min(1)
  @Max(366)
  days!: number;

  /** Minutes in those days. */
  @IsInt()
  @Min(1)
  @Max(527_040)
  minutes!: number;

  /** Flights in those days. */
  @IsInt()
  @Min(1)
  @Max(100_000)
  flights!: number;

  /** Where it is from: the season's plan, a contract. */
  @MaxLength(300)
  @IsText()
  source!: string;
}

/** A planned rate. */
export class PlannedRateDto {
  id!: string;
  airframeId!: string;
  fromOn!: string;
  days!: number;
  minutes!: number;
  flights!: number;
  source!: string;
  /** Whether it is the one that counts today. */
  inForce!: boolean;
  voided!: boolean;
  voidReason!: string | null;
}
