import { ValidateBy } from 'class-validator';

const UNPRINTED = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\ufffd]/u;
const UNPRINTED_IN_LINES = /[\p{Co}\p{Cs}\ufffd\u0000-\u0009\u000b-\u001f\u007f-\u009f]/u;
const MOST_VALUES = 60;
const LONGEST_VALUE = 40;

/**
 * Text kept exactly as typed, spaces and all, however little sense it makes: only what nobody can see in it is refused.
 * Nothing at all is refused too, unless `empty`.
 */
export function IsTyped({
  lines = false,
  empty = false,
}: {
  readonly lines?: boolean;
  readonly empty?: boolean;
} = {}): PropertyDecorator {
  const wrong = (value: string): string | null => {
    if (!empty && value.trim() === '') return 'Nothing is entered';
    return (lines ? UNPRINTED_IN_LINES : UNPRINTED).test(value)
      ? 'There is a character in it that does not print'
      : null;
  };
  return ValidateBy(
    {
      name: 'isTyped',
      validator: { validate: (value: unknown) => typeof value === 'string' && wrong(value) === null },
    },
    {
      message: ({ value, property }) =>
        typeof value === 'string' ? (wrong(value) ?? 'It is right') : `${property} must be text`,
      context: { fix: 'Enter it as text, as it was read.' },
    },
  );
}

/** Readings by their keys, each a short text as typed. */
export function IsTypedValues(): PropertyDecorator {
  return ValidateBy(
    {
      name: 'isTypedValues',
      validator: {
        validate: (value: unknown) =>
          typeof value === 'object' &&
          value !== null &&
          !Array.isArray(value) &&
          Object.keys(value).length <= MOST_VALUES &&
          Object.values(value).every(
            (each) => typeof each === 'string' && each.length <= LONGEST_VALUE && !UNPRINTED.test(each),
          ),
      },
    },
    {
      message: `values must be short texts by the keys of the readings`,
      context: { fix: `Send each reading as text of at most ${LONGEST_VALUE} characters, as it was read.` },
    },
  );
}
