import { parseMoment } from '../../../format/utc-moment.js';
import type { Secret } from '../../../ui/fields/secret-field.js';
import type { FieldMessage } from '../../../ui/messages/error-summary.js';

/** Who signs: the person signed in, another one on this tablet, or the same one looking again alone. */
export type Who = 'me' | 'another' | 'alone';

export interface SignDraft extends Secret {
  readonly performedAt: string;
  readonly who: Who;
  readonly signInName: string;
  /** Why one person inspects their own work. */
  readonly reason: string;
}

export type SignIds = Readonly<
  Record<'performedAt' | 'signInName' | 'secret' | 'reinspectionReason', string>
>;

/** The ids of the fields, by the server's names for them. */
export const signIds = (base: string): SignIds => ({
  performedAt: `${base}-at`,
  signInName: `${base}-name`,
  secret: `${base}-secret`,
  reinspectionReason: `${base}-reason`,
});

/** What is to be mended before it is sent; the server is the judge. */
export function faultsOf(draft: SignDraft, ids: SignIds): FieldMessage[] {
  const { performedAt, who, signInName, reason, method, secret } = draft;
  const moment = parseMoment(performedAt);
  return [
    ...(moment.ok ? [] : [{ fieldId: ids.performedAt, message: moment.reason }]),
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
