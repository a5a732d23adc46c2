import { ValidationPipe } from '@nestjs/common';
import type { ValidationError } from 'class-validator';
import type { FieldRefusal } from './api-refusals.js';
import { RefusalError } from './refusal.error.js';

/** What to do about each kind of fault, the plainest kind first; a decorator's own `context: { fix }` goes before it. */
const FIXES: Readonly<Record<string, string>> = {
  whitelistValidation: 'Leave it out.',
  isDefined: 'Fill it in.',
  isString: 'Enter text.',
  isInt: 'Enter a whole number.',
  isBoolean: 'Send true or false.',
  isArray: 'Send a list.',
  isObject: 'Send an object.',
  nestedValidation: 'Send an object.',
  isNotEmpty: 'Fill it in.',
  isUuid: 'Choose it from the list; it must be the id of a record.',
  isIn: 'Choose one of these.',
  matches: 'Enter it in the form that is asked for.',
  min: 'Enter a larger number.',
  max: 'Enter a smaller number.',
  minLength: 'Fill it in.',
  maxLength: 'Shorten it.',
  arrayMinSize: 'Send at least as many.',
  arrayMaxSize: 'Send fewer at a time.',
  arrayUnique: 'Name each once.',
};

const RANK = new Map(Object.keys(FIXES).map((kind, rank) => [kind, rank]));
const rankOf = (kind: string): number => RANK.get(kind) ?? RANK.size;

/** Checks each request's body and query against its DTO; unknown fields are refused. */
export const validationPipe = new ValidationPipe({
  transform: true,
  whitelist: true,
  forbidNonWhitelisted: true,
  forbidUnknownValues: true,
  validationError: { target: false, value: true },
  exceptionFactory: (errors) =>
    new RefusalError({ code: 'INVALID_FIELDS', fields: errors.flatMap((error) => faults(error, '')) }),
});

/** One fault for each field: the plainest one, and those of the fields inside it. */
function faults(error: ValidationError, above: string): FieldRefusal[] {
  const { property, children = [] } = error;
  const isIndex = /^\d+$/.test(property);
  const field = isIndex ? `${above}[${property}]` : above === '' ? property : `${above}.${property}`;
  const [plainest] = Object.keys(error.constraints ?? {}).sort((a, b) => rankOf(a) - rankOf(b));
  const own = plainest === undefined ? [] : [{ field, ...told(error, plainest) }];
  return [...own, ...children.flatMap((child) => faults(child, field))];
}

function told(
  { value, property, constraints, contexts }: ValidationError,
  kind: string,
): Omit<FieldRefusal, 'field'> {
  const context: unknown = contexts?.[kind];
  const said =
    typeof context === 'object' && context !== null && 'fix' in context ? String(context.fix) : null;
  if (kind === 'whitelistValidation')
    return { reason: 'This request has no such field.', fix: 'Leave it out.' };
  if (value === undefined || value === null) return { reason: 'It is missing.', fix: said ?? 'Fill it in.' };
  return {
    reason: asSentence(constraints?.[kind] ?? '', property),
    fix: said ?? FIXES[kind] ?? 'Correct it.',
  };
}

/** 'minutes must not be less than 0' becomes 'It must not be less than 0.' */
function asSentence(message: string, property: string): string {
  const text = message
    .replace(`each value in ${property} `, 'each of them ')
    .replace(new RegExp(`^${property} `), 'it ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1).replace(/\.$/, '')}.`;
}
