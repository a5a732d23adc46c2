import { IsIn, IsOptional, Matches, MaxLength } from 'class-validator';
import { IsDayText, IsText } from '../../platform/http/field-forms.js';

const KINDS = ['torque-wrench', 'gauge', 'other'] as const;
const DECIMAL = /^\d{1,9}([.,]\d{1,6})?$/;

const decimal = (fix: string) => ({ message: 'it is not a number that can be read', context: { fix } });

/** A tool to be registered. */
export class NewToolDto {
  /** As marked on the tool; one serial number is one tool. */
  @MaxLength(60)
  @IsText()
  serialNumber!: string;

  /** What it is, such as "torque wrench, 1/2 inch drive". */
  @MaxLength(120)
  @IsText()
  description!: string;

  @IsIn(KINDS, {
    message: 'it must be torque-wrench, gauge or other',
    context: { fix: 'Choose what kind of tool it is.' },
  })
  kind!: 'torque-wrench' | 'gauge' | 'other';

  /** Of a torque wrench N·m, lbf·ft, lbf·in or kgf·m; of a gauge any unit, as text. */
  @IsOptional()
  @MaxLength(20)
  @IsText()
  unit?: string | null;

  /** The lowest value it may be used at, in its unit, as typed. */
  @IsOptional()
  @Matches(DECIMAL, decimal('Enter digits with at most one decimal mark, such as 20 or 12.5.'))
  rangeLow?: string | null;

  /** The highest value it may be used at, in its unit, as typed. */
  @IsOptional()
  @Matches(DECIMAL, decimal('Enter digits with at most one decimal mark, such as 100 or 112.5.'))
  rangeHigh?: string | null;

  /** The largest deviation its certificate allows, in percent, as typed. */
  @IsOptional()
  @Matches(DECIMAL, decimal('Enter a percentage without its sign, such as 4 or 2.5.'))
  deviation?: string | null;
}

/** A calibration to be recorded. */
export class NewCalibrationDto {
  /** The day it was made. */
  @IsDayText()
  calibratedOn!: string;

  /** The day it is due again; the tool is good through that day. */
  @IsDayText()
  dueOn!: string;

  /** The number of its certificate. */
  @MaxLength(120)
  @IsText()
  certificate!: string;
}

/** Why a calibration is voided. */
export class VoidCalibrationDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}

/** A tool that is calibrated, and how it stands today. */
export class ToolDto {
  id!: string;
  serialNumber!: string;
  description!: string;
  kind!: 'torque-wrench' | 'gauge' | 'other';
  unit!: string | null;
  rangeLow!: string | null;
  rangeHigh!: string | null;
  /** Percent. */
  deviation!: string | null;
  /** By the newest calibration, today in UTC; due soon within thirty days. */
  status!: 'in-date' | 'soon' | 'out-of-date' | 'never';
  /** Of the calibration that governs; null when there is none. */
  calibratedOn!: string | null;
  /** The last day it is good for. */
  dueOn!: string | null;
  certificate!: string | null;
  version!: number;
}

/** One calibration of a tool. */
export class CalibrationDto {
  id!: string;
  calibratedOn!: string;
  dueOn!: string;
  certificate!: string;
  /** True for the one the tool's status goes by. */
  governs!: boolean;
  voided!: boolean;
  voidReason!: string | null;
}

/** One reading that was taken with a tool. */
export class ToolUseDto {
  entryId!: string;
  packageId!: string;
  packageNumber!: string;
  packageTitle!: string;
  stepNumber!: number;
  stepTitle!: string;
  /** What was captured: 'Forward mount bolts'. */
  label!: string;
  /** The point of a group that was read; null where there are no points. */
  point!: string | null;
  /** What was typed, with its unit. */
  typed!: string;
  verdict!: 'accepted' | 'rejected';
  voided!: boolean;
  personName!: string;
  enteredAt!: string;
}

/** A tool with all its calibrations, the newest first, and its uses. */
export class ToolViewDto extends ToolDto {
  calibrations!: CalibrationDto[];
  /** The newest two hundred. */
  uses!: ToolUseDto[];
  /** How many uses there are in all. */
  usesInAll!: number;
}
