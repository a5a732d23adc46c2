import { parseMoment } from '../../../format/utc-moment.js';
import type { Secret } from '../../../ui/fields/secret-field.js';
import type { FieldMessage } from '../../../ui/messages/error-summary.js';
import { checkFigures, type TypedFigures } from '../../../ui/reading/figures.js';

/** Who signs: the person signed in, another one on this tablet, or the same one looking again alone. */
export type Who = 'me' | 'another' | 'alone';

export interface SignDraft extends Secret {
  readonly performedAt: string;
  readonly who: Who;
  readonly signInName: string;
  /** Why one person inspects their own work. */
  readonly reason: string;
  /** What the counter showed of an auxiliary power unit that the step moves; null for any other step. */
  readonly figures: TypedFigures | null;
}

export type SignIds = Readonly<
  Record<
    | 'performedAt'
    | 'signInName'
    | 'secret'
    | 'reinspectionReason'
    | 'counterReading'
    | 'counterReading.minutes'
    | 'counterReading.starts',
    string
  >
>;

/** The ids of the fields, by the server's names for them. */
export const signIds = (base: string): SignIds => ({
  performedAt: `${base}-at`,
  signInName: `${base}-name`,
  secret: `${base}-secret`,
  reinspectionReason: `${base}-reason`,
  counterReading: `${base}-hours`,
  'counterReading.minutes': `${base}-hours`,
  'counterReading.starts': `${base}-starts`,
});

/** What is to be mended before it is sent; the server is the judge. */
export function faultsOf(draft: SignDraft, ids: SignIds): FieldMessage[] {
  const { performedAt, who, signInName, reason, method, secret, figures } = draft;
  const wrong = figures === null ? {} : checkFigures(figures);
  const moment = parseMoment(performedAt);
  return [
    ...(moment.ok ? [] : [{ fieldId: ids.performedAt, message: moment.reason }]),
    ...Object.entries(wrong).map(([name, message]) => ({
      fieldId: ids[name === 'starts' ? 'counterReading.starts' : 'counterReading.minutes'],
      message,
    })),
    ...(who === 'another' && signInName.trim() === ''
      ? [{ fieldId: ids.signInName, message: 'Enter the sign-in name of the person who signs' }]
      : []),
    ...(who === 'alone' && reason.trim() === ''
      ? [{ fieldId: ids.reinspectionReason, message: 'Enter why there is no other inspector' }]
      : []),
    ...(secret === ''
      ? [{ fieldId: ids.secret, message: `Enter the ${method === 'pin' ? 'PIN' : 'password'}, to sign` }]
      : []),
  ];
}
