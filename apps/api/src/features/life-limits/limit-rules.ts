import { refuse } from '../../platform/problems/refusal.error.js';
import type { LimitRowDto } from './life-limit.dto.js';

interface Fault {
  readonly field: string;
  readonly reason: string;
  readonly fix: string;
}

/** Stops when what rows of a revision say does not fit together. Refuses: INVALID_FIELDS. */
export function refuseUnfit(
  basis: 'manual' | 'directive',
  rows: readonly LimitRowDto[],
  placeOf: (index: number) => string,
): void {
  const fields = rows.flatMap((row, index) => faultsOf(basis, row).map((fault) => at(placeOf(index), fault)));
  const twice = rows.findIndex((row, index) => rows.findIndex((other) => sameKey(row, other)) < index);
  if (twice !== -1)
    fields.push(
      at(placeOf(twice), {
        field: 'partNumber',
        reason: 'This part number stands in the list already, for the same model and rating.',
        fix: 'Leave one of the two rows.',
      }),
    );
  if (fields.length > 0) refuse({ code: 'INVALID_FIELDS', fields });
}

function at(place: string, { field, ...rest }: Fault): Fault {
  return { field: `${place}${field}`, ...rest };
}

function sameKey(a: LimitRowDto, b: LimitRowDto): boolean {
  return (
    a.partNumber === b.partNumber &&
    a.engineModelId === b.engineModelId &&
    (a.ratingCode ?? null) === (b.ratingCode ?? null)
  );
}

function faultsOf(basis: 'manual' | 'directive', row: LimitRowDto): Fault[] {
  const { authorisation, cycles, minutes, calendarSpan } = row;
  const given = cycles != null || minutes != null || calendarSpan != null;
  if (authorisation === 'limited' && !given)
    return [
      {
        field: 'cycles',
        reason: 'A limited part has a limit in cycles, in hours, on the calendar or in several.',
        fix: 'Enter cycles, minutes or a calendar life.',
      },
    ];
  if (authorisation !== 'limited' && given)
    return [
      {
        field: cycles != null ? 'cycles' : minutes != null ? 'minutes' : 'calendarSpan',
        reason: 'Only a limited part has a limit.',
        fix: "Leave it empty, or choose 'limited'.",
      },
    ];
  if (basis === 'directive' && authorisation === 'not-limited')
    return [
      {
        field: 'authorisation',
        reason: 'A directive lowers a limit; it does not lift one.',
        fix: 'Enter the limit it states, or a revision of the manual.',
      },
    ];
  return calendarFaults(row);
}

function calendarFaults({ calendarSpan, calendarUnit, calendarFrom, monthRule }: LimitRowDto): Fault[] {
  if (calendarSpan == null) {
    const field =
      calendarUnit != null
        ? 'calendarUnit'
        : calendarFrom != null
          ? 'calendarFrom'
          : monthRule != null
            ? 'monthRule'
            : null;
    return field === null
      ? []
      : [
          {
            field,
            reason: 'There is no calendar life it belongs to.',
            fix: 'Enter how many days or months, or leave it out.',
          },
        ];
  }
  return [
    ...(calendarUnit != null
      ? []
      : [
          {
            field: 'calendarUnit',
            reason: 'A calendar life is in days or in months.',
            fix: "Send 'days' or 'months'.",
          },
        ]),
    ...(calendarFrom != null
      ? []
      : [
          {
            field: 'calendarFrom',
            reason: 'It is not said from when the calendar life counts.',
            fix: "Send 'new', 'first-installation' or 'overhaul'.",
          },
        ]),
  ];
}
