import type { ActHeaders } from '../../server/act.js';
import { writeLoose } from '../../server/loose.js';
import type { WorkPackage } from '../../server/work.js';
import type { Secret } from '../../ui/fields/secret-field.js';
import type { OrderRequest } from './order/order-draft.js';

export interface Amendment extends OrderRequest {
  readonly packageId: string;
  /** Another person, on the same device. */
  readonly confirmation: Secret & { readonly signInName: string };
}

/** Amends the order, confirmed by a second person. Throws: ProblemError. */
export const amendOrder = ({ packageId, ...body }: Amendment, headers: ActHeaders) =>
  writeLoose<WorkPackage>('/api/packages/{id}/order', {
    params: { path: { id: packageId } },
    body,
    headers,
  });

export interface Withdrawal {
  readonly packageId: string;
  readonly reason: string;
}

/** Withdraws a package in which nothing moved. Throws: ProblemError. */
export const withdrawPackage = ({ packageId, reason }: Withdrawal, headers: ActHeaders) =>
  writeLoose<WorkPackage>('/api/packages/{id}/withdraw', {
    params: { path: { id: packageId } },
    body: { reason },
    headers,
  });

export type Moves = 'removal' | 'installation';

/** What a step that moves something captures: the serial read from its plate, and the papers of what is fitted. */
interface MovesCapture {
  readonly kind: 'component-off' | 'component-on' | 'papers';
  readonly key: string;
  readonly label: string;
}

export interface OwnStep {
  readonly title: string;
  readonly text?: string;
  readonly inspection: 'none' | 'independent';
  readonly moves?: Moves;
  readonly captures?: readonly MovesCapture[];
}

export interface AddedStep extends OwnStep {
  readonly packageId: string;
}

/** Adds a step of one's own to an open package. Throws: ProblemError. */
export const addStep = ({ packageId, ...body }: AddedStep, headers: ActHeaders) =>
  writeLoose<unknown>('/api/packages/{id}/steps', { params: { path: { id: packageId } }, body, headers });
