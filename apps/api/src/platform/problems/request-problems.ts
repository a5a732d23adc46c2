import { ROLE_WORDS } from '../access/roles.js';
import type { ApiRefusal } from './api-refusals.js';
import { aboutField, type ProblemTable } from './problem-row.js';

type RequestCode =
  | 'NOT_SIGNED_IN'
  | 'SIGN_IN_FAILED'
  | 'TOO_MANY_ATTEMPTS'
  | 'PASSWORD_CHANGE_NEEDED'
  | 'CSRF_TOKEN_WRONG'
  | 'OTHER_SITE'
  | 'NOT_ALLOWED'
  | 'WRONG_PASSWORD'
  | 'PASSWORD_TOO_WEAK'
  | 'LICENCE_MISSING'
  | 'LAST_ADMINISTRATOR'
  | 'NO_SUCH_ROUTE'
  | 'MALFORMED'
  | 'INVALID_FIELDS'
  | 'BODY_TOO_LARGE'
  | 'UNSUPPORTED_MEDIA_TYPE'
  | 'MISSING_KEY'
  | 'KEY_MALFORMED'
  | 'KEY_REUSED'
  | 'MISSING_IF_MATCH'
  | 'IF_MATCH_MALFORMED'
  | 'STALE';

export type RequestRefusal = Extract<ApiRefusal, { readonly code: RequestCode }>;

const whole = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

const inWords = (roles: readonly string[]): string =>
  roles.length < 2 ? roles.join('') : `${roles.slice(0, -1).join(', ')} or ${roles[roles.length - 1]}`;

/** Who asks and how it is asked. */
export const REQUEST_PROBLEMS: ProblemTable<RequestRefusal> = {
  NOT_SIGNED_IN: () => ({
    status: 401,
    title: 'Not signed in',
    detail: 'This needs a session, and there is none or it has ended. Sign in, then try again.',
  }),
  SIGN_IN_FAILED: () => ({
    status: 401,
    title: 'Name or password is not right',
    detail: 'No one may sign in with this name and this password. Check both, or ask an administrator.',
  }),
  TOO_MANY_ATTEMPTS: ({ retryAfterSeconds }) => ({
    status: 429,
    title: 'Too many attempts',
    detail: `Too many wrong passwords for this name. Try again in ${whole(retryAfterSeconds, 'second')}.`,
    retryAfterSeconds,
  }),
  PASSWORD_CHANGE_NEEDED: () => ({
    status: 403,
    title: 'Choose a password of your own first',
    detail: 'You signed in with a password that someone else set. Change it; then everything else is open.',
  }),
  CSRF_TOKEN_WRONG: () => ({
    status: 403,
    title: 'The request did not prove that it comes from this session',
    detail:
      'The header x-csrf-token is missing or belongs to another session. Load the page again, then repeat.',
  }),
  OTHER_SITE: () => ({
    status: 403,
    title: 'The request comes from another site',
    detail: 'Changes are taken only from the pages of this server. Open it directly and repeat.',
  }),
  NOT_ALLOWED: ({ holders, names }) => {
    const roles = inWords(holders.map((role) => ROLE_WORDS[role]));
    const people = names === undefined || names.length === 0 ? '' : ` Today: ${names.join(', ')}.`;
    return {
      status: 403,
      title: 'Not yours to do',
      detail: `This needs the role ${roles}, which you do not hold. Ask someone who does.${people}`,
      extra: { holders },
    };
  },
  WRONG_PASSWORD: ({ field }) =>
    aboutField(403, 'The password is not right', {
      field,
      reason: 'This is not your password.',
      fix: 'Enter the password you sign in with.',
    }),
  PASSWORD_TOO_WEAK: (refusal) => aboutField(422, 'The password is too easy to guess', refusal),
  LICENCE_MISSING: () => ({
    status: 403,
    title: 'No licence on record',
    detail:
      'A release needs the number of your licence, and none is recorded for you. Ask an administrator to add it.',
  }),
  LAST_ADMINISTRATOR: () => ({
    status: 409,
    title: 'The last administrator stays',
    detail: 'Without this person nobody could manage people. Give someone else the role administrator first.',
  }),
  NO_SUCH_ROUTE: () => ({
    status: 404,
    title: 'There is nothing at this address',
    detail: 'Check the address and the method; /api/docs lists them all.',
  }),
  MALFORMED: ({ reason, fix }) => ({
    status: 400,
    title: 'The request cannot be read',
    detail: `${reason} ${fix}`,
  }),
  INVALID_FIELDS: ({ fields }) => ({
    status: 400,
    title: 'Some fields cannot be taken',
    detail: `${whole(fields.length, 'field')} to correct: ${fields.map(({ field }) => field).join(', ')}.`,
    fields,
  }),
  BODY_TOO_LARGE: () => ({
    status: 413,
    title: 'The request is too large',
    detail:
      'At most 1 MiB is taken, 8 MiB for a picture, 32 MiB for a file that is brought in. Send less at a time.',
  }),
  UNSUPPORTED_MEDIA_TYPE: ({ accepted }) => ({
    status: 415,
    title: 'This kind of content is not taken',
    detail: `Send ${inWords(accepted)}, and say so in the header content-type.`,
  }),
  MISSING_KEY: () => ({
    status: 400,
    title: 'The act has no key',
    detail:
      'The header idempotency-key is missing. Send a new random key for each act, and the same one when repeating it.',
  }),
  KEY_MALFORMED: () => ({
    status: 400,
    title: 'The key of the act cannot be taken',
    detail: 'The header idempotency-key must be 8 to 255 visible ASCII characters. Send a random UUID.',
  }),
  KEY_REUSED: () => ({
    status: 422,
    title: 'The key belongs to another act',
    detail:
      'This idempotency-key was used for something else already. Nothing was done again; send a new key for a new act.',
  }),
  MISSING_IF_MATCH: () => ({
    status: 428,
    title: 'Say which version you saw',
    detail: 'The header if-match is missing. Read the record again and send the etag it came with.',
  }),
  IF_MATCH_MALFORMED: () => ({
    status: 400,
    title: 'The version cannot be read',
    detail: 'The header if-match must be an etag as this server gave it, such as "v3".',
  }),
  STALE: ({ what }) => ({
    status: 412,
    title: 'Changed by someone else meanwhile',
    detail: `${what ?? 'The record'} is no longer as you saw it. Read it again, look at what changed, then repeat.`,
  }),
};
