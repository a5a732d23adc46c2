import type { ApiRefusal } from './api-refusals.js';
import { aboutField, type ProblemTable } from './problem-row.js';

type SigningCode =
  | 'WRONG_PIN'
  | 'SIGNER_NOT_PROVEN'
  | 'NOT_AUTHORISED_TODAY'
  | 'STEP_BLOCKED'
  | 'CAPTURES_MISSING'
  | 'INSTALLATION_REFUSED'
  | 'MOVE_RECORDED';

export type SigningRefusal = Extract<ApiRefusal, { readonly code: SigningCode }>;

const SCOPE_WORDS = { work: 'work', inspection: 'inspections', release: 'releases' } as const;

/** Who signs a step, and what keeps it from being signed. */
export const SIGNING_PROBLEMS: ProblemTable<SigningRefusal> = {
  WRONG_PIN: ({ field }) =>
    aboutField(403, 'The PIN is not right', {
      field,
      reason: 'This is not your PIN, or you have not chosen one.',
      fix: 'Enter it again, or sign with your password.',
    }),
  SIGNER_NOT_PROVEN: ({ field, method }) =>
    aboutField(403, 'Name or secret is not right', {
      field,
      reason: `Nobody may sign with this name and this ${method === 'pin' ? 'PIN' : 'password'}.`,
      fix: 'Check both, or sign in at a tablet of your own.',
    }),
  NOT_AUTHORISED_TODAY: ({ name, scope, type, on }) => ({
    status: 403,
    title: 'Not authorised today',
    detail:
      `${name} holds no authorisation for ${SCOPE_WORDS[scope]} on ${type ?? 'all types of airframe'} in force on ${on}. ` +
      'Ask someone who does, or an administrator to record it.',
  }),
  STEP_BLOCKED: ({ blockers }) => ({
    status: 409,
    title: 'Other steps come first',
    detail: `${blockers
      .map(
        ({ code, number }) =>
          `Step ${number} is not ${code === 'INSPECTION_MISSING' ? 'inspected' : 'signed'}.`,
      )
      .join(' ')} Finish what comes first, then sign this one.`,
    extra: { blockers },
  }),
  CAPTURES_MISSING: ({ missing }) => ({
    status: 422,
    title: 'Something is not entered or not accepted',
    detail: `${missing
      .map(
        ({ code, label, point }) =>
          `${label}${point === null ? '' : ` ${point}`} is ${code === 'CAPTURE_REJECTED' ? 'not accepted' : 'missing'}.`,
      )
      .join(' ')} Enter it, then sign.`,
    extra: { missing },
  }),
  INSTALLATION_REFUSED: ({ objections }) => ({
    status: 422,
    title: 'It may not be fitted',
    detail: `${objections.map(({ reason }) => reason).join(' ')} ${objections[0]?.fix ?? ''}`.trim(),
    extra: { objections },
  }),
  MOVE_RECORDED: ({ what, at, asked }) =>
    aboutField(409, 'It is recorded at another moment', {
      field: 'performedAt',
      reason: `The ${what} is recorded at ${at}, not at ${asked}.`,
      fix: `Sign with ${at}. If that moment is wrong, the records office voids the stay among the component’s places; then sign with the right one.`,
    }),
};
