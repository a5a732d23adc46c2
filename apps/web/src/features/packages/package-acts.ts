import { dataOrThrow, ifMatch } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import type { ActHeaders } from '../../server/act.js';
import { api } from '../../server/api.js';

type Shapes = components['schemas'];

export type OwnStep = Shapes['OwnStepDto'];

export interface Amendment {
  readonly packageId: string;
  readonly version: number;
  /** The whole order as it shall be, why, and the second person on the same device. */
  readonly body: Shapes['AmendOrderDto'];
}

/** Amends the order, confirmed by a second person. Throws: ProblemError. */
export async function amendOrder({ packageId, version, body }: Amendment, headers: ActHeaders) {
  return dataOrThrow(
    await api.POST('/api/packages/{id}/order', {
      params: { path: { id: packageId } },
      body,
      headers: { ...headers, ...ifMatch(`"v${version}"`) },
    }),
  );
}

export interface Withdrawal {
  readonly packageId: string;
  readonly reason: string;
}

/** Withdraws a package in which nothing moved. Throws: ProblemError. */
export async function withdrawPackage({ packageId, reason }: Withdrawal, headers: ActHeaders) {
  return dataOrThrow(
    await api.POST('/api/packages/{id}/withdraw', {
      params: { path: { id: packageId } },
      body: { reason },
      headers,
    }),
  );
}

export interface AddedStep {
  readonly packageId: string;
  readonly step: OwnStep;
}

/** Adds a step of one's own to an open package. Throws: ProblemError. */
export async function addStep({ packageId, step }: AddedStep, headers: ActHeaders) {
  return dataOrThrow(
    await api.POST('/api/packages/{id}/steps', {
      params: { path: { id: packageId } },
      body: step,
      headers,
    }),
  );
}
