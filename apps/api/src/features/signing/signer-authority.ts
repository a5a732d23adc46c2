import { Injectable } from '@nestjs/common';
import { dateOf } from '@strutbook/domain/units/calendar.js';
import { requireRole } from '../../platform/access/require-role.js';
import { SIGNING_ROLES } from '../../platform/access/roles.js';
import type { Signer } from '../../platform/access/signers.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Authorisations } from '../../records/authorisations/authorisations.js';
import { airframeAbove } from '../../records/stays/airframe-above.js';
import type { PackageHead } from '../../records/work/package-head.js';
import type { Meaning } from './signed-words.js';

const SCOPE = { done: 'work', inspection: 'inspection' } as const;

/** Whether a person may sign this, today. */
@Injectable()
export class SignerAuthority {
  constructor(
    private readonly authorisations: Authorisations,
    private readonly clock: Clock,
  ) {}

  /**
   * Makes sure that the signer may sign: their roles and authorisations as they stand now, locked until the act is
   * done, so that what is taken away at the same moment is taken away before it or after it.
   * Refuses: SIGNER_NOT_PROVEN, NOT_ALLOWED, NOT_AUTHORISED_TODAY.
   */
  async check(tx: Tx, signer: Signer, meaning: Meaning, head: PackageHead): Promise<void> {
    await requireRole(tx, signer, SIGNING_ROLES[meaning]);
    const { operatorId, personId } = signer;
    await this.authorisations.hold(tx, operatorId, [personId]);
    const typeId = await typeOf(tx, operatorId, head);
    const on = dateOf(toInstant(this.clock.now()));
    const scope = SCOPE[meaning];
    if (await this.authorisations.holds(tx, operatorId, personId, scope, typeId, on)) return;
    const type =
      typeId === null
        ? null
        : await tx.airframeType.findUnique({ where: { operatorId_id: { operatorId, id: typeId } } });
    refuse({
      code: 'NOT_AUTHORISED_TODAY',
      name: signer.fullName,
      scope,
      type: type?.designation ?? null,
      on,
    });
  }
}

/** The type of the airframe the work is on, or on which its component hangs now; null when it hangs on none. */
async function typeOf(tx: Tx, operatorId: number, head: PackageHead): Promise<string | null> {
  if (head.airframe !== null) return head.airframe.typeId;
  if (head.component === null) return null;
  return (await airframeAbove(tx, operatorId, head.component.id))?.typeId ?? null;
}
