import { ValidateBy, type ValidationOptions } from 'class-validator';
import { dayFromWire, fromWire } from './instants.js';

const UNPRINTED = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\ufffd]/u;
const UNPRINTED_IN_LINES = /[\p{Co}\p{Cs}\ufffd\u0000-\u0009\u000b-\u001f\u007f-\u009f]/u;

function form(name: string, wrong: (value: string) => string | null, each: boolean): PropertyDecorator {
  const options: ValidationOptions = {
    each,
    message: ({ value, property }) =>
      typeof value === 'string' ? (wrong(value) ?? 'It is right') : `${property} must be text`,
    context: { fix: FIX[name] ?? 'Correct it.' },
  };
  return ValidateBy(
    { name, validator: { validate: (value: unknown) => typeof value === 'string' && wrong(value) === null } },
    options,
  );
}

const FIX: Readonly<Record<string, string>> = {
  isText: 'Enter it without spaces around it and with characters that print.',
  isInstantText: 'Enter it in UTC as YYYY-MM-DDTHH:MMZ, such as 2026-03-04T09:05Z.',
  isDayText: 'Enter it as YYYY-MM-DD, such as 2026-03-04.',
};

/**
 * Text that a record may keep: not empty, no space at its ends, only characters that print (with `lines`, line
 * feeds too). Two serial numbers that look the same are then the same.
 */
export function IsText({
  lines = false,
  each = false,
}: {
  readonly lines?: boolean;
  readonly each?: boolean;
} = {}): PropertyDecorator {
  return form(
    'isText',
    (value) => {
      if (value.trim() === '') return 'Nothing is entered';
      if (value !== value.trim()) return 'There is a space before or after it';
      return (lines ? UNPRINTED_IN_LINES : UNPRINTED).test(value)
        ? 'There is a character in it that does not print'
        : null;
    },
    each,
  );
}

/** An instant as the wire has it, whole minutes of UTC: 'YYYY-MM-DDTHH:MMZ'. */
export function IsInstantText(): PropertyDecorator {
  return form(
    'isInstantText',
    (value) => (fromWire(value) === null ? 'This is no minute of UTC' : null),
    false,
  );
}

/** A day as the wire has it: 'YYYY-MM-DD'. */
export function IsDayText(): PropertyDecorator {
  return form('isDayText', (value) => (dayFromWire(value) === null ? 'There is no such day' : null), false);
}
