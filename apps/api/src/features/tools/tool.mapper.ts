import { calibrationStatus, governingCalibration } from '@strutbook/domain/tools/calibration.js';
import type { CalendarDate } from '@strutbook/domain/units/calendar.js';
import type { Typed } from '@strutbook/domain/work/entry.js';
import type { StepDefinition } from '@strutbook/domain/work/step.js';
import type { StepEntry, Tool, ToolCalibration } from '../../platform/database/generated/client.js';
import { dayToWire, toWire } from '../../platform/http/instants.js';
import type { CalibrationDto, ToolDto, ToolUseDto } from './tool.dto.js';

export type ToolRow = Tool & { readonly toolCalibrationByTool: readonly ToolCalibration[] };

interface Calibrated {
  readonly id: string;
  readonly calibratedOn: CalendarDate;
  readonly dueOn: CalendarDate;
  readonly certificate: string;
}

const calibrated = ({ id, calibratedOn, dueOn, certificate }: ToolCalibration): Calibrated => ({
  ...{ id, certificate, calibratedOn: dayToWire(calibratedOn), dueOn: dayToWire(dueOn) },
});

/** The calibrations that count, in the order of the rows. */
const counting = (rows: readonly ToolCalibration[]): Calibrated[] =>
  rows.filter((row) => row.voidedSeq === null).map(calibrated);

/** A tool as the wire has it, as it stands on a day. Total; its calibrations in the order recorded. */
export function toolToWire({ toolCalibrationByTool, ...tool }: ToolRow, on: CalendarDate): ToolDto {
  const { id, serialNumber, description, unit, rangeLow, rangeHigh, deviation, version } = tool;
  const calibrations = counting(toolCalibrationByTool);
  const governing = governingCalibration(calibrations, on);
  return {
    ...{ id, serialNumber, description, kind: tool.kind as ToolDto['kind'] },
    ...{ unit, rangeLow, rangeHigh, deviation, version },
    status: calibrationStatus(calibrations, on),
    calibratedOn: governing?.calibratedOn ?? null,
    dueOn: governing?.dueOn ?? null,
    certificate: governing?.certificate ?? null,
  };
}

/** A tool's calibrations, the newest first, voided ones marked. Total. */
export function calibrationsToWire(rows: readonly ToolCalibration[], on: CalendarDate): CalibrationDto[] {
  const governing = governingCalibration(counting(rows), on);
  return rows
    .map((row) => ({
      ...calibrated(row),
      governs: row.id === governing?.id,
      voided: row.voidedSeq !== null,
      voidReason: row.voidReason,
    }))
    .reverse();
}

export type UseRow = StepEntry & {
  readonly step: {
    readonly number: number;
    readonly definition: string;
    readonly package: { readonly number: string; readonly title: string };
  };
};

/** One use as the wire has it. Total for rows this server wrote. */
export function useToWire({ step, ...entry }: UseRow): ToolUseDto {
  const { title, captures } = JSON.parse(step.definition) as StepDefinition;
  return {
    ...{ entryId: entry.id, packageId: entry.packageId, point: entry.point },
    ...{ packageNumber: step.package.number, packageTitle: step.package.title },
    stepNumber: step.number,
    stepTitle: title,
    label: captures.find(({ key }) => key === entry.capture)?.label ?? entry.capture,
    typed: typedText(JSON.parse(entry.typed) as Typed),
    verdict: entry.verdict as ToolUseDto['verdict'],
    voided: entry.voidedSeq !== null,
    personName: entry.personName,
    enteredAt: toWire(entry.enteredAt),
  };
}

function typedText(typed: Typed): string {
  switch (typed.kind) {
    case 'torque':
      return `${typed.indication} ${typed.unit}`;
    case 'readings':
      return Object.values(typed.values).join(', ');
    case 'leak-check':
      return `${typed.minutes} minutes, ${typed.power}`;
    case 'count':
      return typed.number;
    case 'text':
      return typed.text;
    default:
      return typed.kind;
  }
}
