import { ValidationPipe } from '@nestjs/common';
import type { ValidationError } from 'class-validator';
import type { FieldRefusal } from './api-refusals.js';
import { RefusalError } from './refusal.error.js';

/** What to do about each kind of fault; a decorator's own `context: { fix }` goes before it. */
const FIXES: Readonly<Record<string, string>> = {
  arrayMaxSize: 'Send fewer at a time.',
  arrayMinSize: 'Send more.',
  isArray: 'Send a list.',
  isBoolean: 'Send true or false.',
  isDefined: 'Fill it in.',
  isIn: 'Choose one of these.',
  isInt: 'Enter a whole number.',
  isNotEmpty: 'Fill it in.',
  isObject: 'Send an object.',
  isString: 'Enter text.',
  isUuid: 'Choose it from the list; it must be the id of a record.',
  matches: 'Enter it in the form that is asked for.',
  max: 'Enter a smaller number.',
  maxLength: 'Shorten it.',
  min: 'Enter a larger number.',
  minLength: 'Enter more.',
  nestedValidation: 'Send an object.',
  whitelistValidation: 'Leave it out; this request has no such field.',
};

/** Checks each request's body, query and parameters against its DTO; unknown fields are refused. */
export const validationPipe = new ValidationPipe({
  transform: true,
  whitelist: true,
  forbidNonWhitelisted: true,
  forbidUnknownValues: true,
  stopAtFirstError: true,
  validationError: { target: false, value: false },
  exceptionFactory: (errors) => new RefusalError({ code: 'INVALID_FIELDS', fields: errors.flatMap((each) => faults(each)) }),
});

function faults(error: ValidationError, above = ''): FieldRefusal[] {
  const isIndex = /^\d+$/.test(error.property);
  const field = isIndex ? `${above}[${error.property}]` : above === '' ? error.property : `${above}.${error.property}`;
  const own = Object.entries(error.constraints ?? {}).map(([kind, message]) => {
    const context: unknown = error.contexts?.[kind];
    const said = typeof context === 'object' && context !== null && 'fix' in context ? String(context.fix) : undefined;
    return { field, reason: sentence(message), fix: said ?? FIXES[kind] ?? 'Correct it.' };
  });
  return [...own, ...(error.children ?? []).flatMap((child) => faults(child, field))];
}

function sentence(message: string): string {
  const text = message.charAt(0).toUpperCase() + message.slice(1);
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
