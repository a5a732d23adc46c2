import type { Tx } from '../database/database.js';
import { refuse } from '../problems/refusal.error.js';
import { isRole, type Role } from './roles.js';
import type { Signer } from './signers.js';

/**
 * Makes sure that who proved themselves before the transaction still holds one of the roles, and keeps them until the
 * act is done. Refuses: SIGNER_NOT_PROVEN, NOT_ALLOWED.
 */
export async function requireRole(tx: Tx, signer: Signer, roles: readonly Role[]): Promise<void> {
  const [person] = await tx.$queryRaw<{ roles: string[]; disabled: boolean }[]>`
    SELECT roles, disabled_at IS NOT NULL AS disabled FROM person
     WHERE operator_id = ${signer.operatorId}::int AND id = ${signer.personId}::uuid FOR SHARE`;
  if (person === undefined || person.disabled)
    refuse({ code: 'SIGNER_NOT_PROVEN', field: 'secret', method: signer.method });
  const held = person.roles.filter(isRole);
  if (!roles.some((role) => held.includes(role))) refuse({ code: 'NOT_ALLOWED', holders: roles });
}
