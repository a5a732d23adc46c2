import type { Role } from './roles.js';

/** The signed-in person on whose behalf a request or a job runs. */
export interface Actor {
  readonly operatorId: number;
  readonly personId: string;
  readonly fullName: string;
  readonly licence: string | null;
  readonly roles: readonly Role[];
  readonly sessionId: string;
}

/** True when the person holds at least one of the roles. Total. */
export function holdsOne(actor: Pick<Actor, 'roles'>, roles: readonly Role[]): boolean {
  return roles.some((role) => actor.roles.includes(role));
}
