import { ProblemError } from '@strutbook/api-client/problem-error.js';
import type { FieldMessage } from './error-summary.js';

/** What the server says of one field: what to enter, or else why it refuses. */
const sentence = ({ reason, fix }: { readonly reason: string; readonly fix: string }): string => {
  if (reason === '') return fix;
  return fix === '' ? reason : `${reason}${/[.!?]$/.test(reason) ? '' : '.'} ${fix}`;
};

/** The message to show beside a field, or null. */
export function fieldMessage(error: unknown, field: string): string | null {
  if (!(error instanceof ProblemError)) return null;
  const said = error.fields.find((entry) => entry.field === field);
  return said === undefined ? null : sentence(said);
}

/** The server's refusal as lines for the summary; ids maps its field names to the controls' ids. */
export function summaryOf(error: unknown, ids: Readonly<Record<string, string>> = {}): FieldMessage[] {
  if (error === null || error === undefined) return [];
  if (!(error instanceof ProblemError))
    return [{ fieldId: null, message: 'Something in this page failed. Nothing was saved.' }];
  if (error.fields.length === 0)
    return [{ fieldId: null, message: error.problem.detail ?? error.problem.title }];
  return error.fields.map((entry) => ({ fieldId: ids[entry.field] ?? null, message: sentence(entry) }));
}

export interface PathMessage {
  /** The field's path with dots alone, 'flights.3.landingAt'; null when it is about the whole. */
  readonly path: string | null;
  readonly message: string;
}

/** 'flights[3].landingAt' -> 'flights.3.landingAt' */
const dotted = (field: string): string => field.replaceAll(/\[(\d+)\]/g, '.$1');

/** The server's refusal line by line, with the path of each field. Empty when there is none. */
export function fieldMessages(error: unknown): PathMessage[] {
  return summaryOf(error).map(({ message }, place) => {
    const field = error instanceof ProblemError ? (error.fields[place]?.field ?? '') : '';
    return { path: field === '' ? null : dotted(field), message };
  });
}
