import type { Tx } from '../../platform/database/database.js';
import type { Authorisation } from '../../platform/database/generated/client.js';
import { dayToWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';

/** Refuses an end that lies before the start. */
export function refuseEndBeforeStart(fromOn: string, toOn: string | null, field: string): void {
  if (toOn === null || toOn >= fromOn) return;
  refuse({
    code: 'INVALID_FIELDS',
    fields: [
      {
        field,
        reason: `The last day, ${toOn}, lies before the first, ${fromOn}.`,
        fix: `Enter ${fromOn} or a later day.`,
      },
    ],
  });
}

/** Refuses to lengthen: a longer time rests on a letter of its own. */
export function refuseLonger(toOn: Date | null, lastOn: string): void {
  if (toOn === null || lastOn < dayToWire(toOn)) return;
  refuse({
    code: 'INVALID_FIELDS',
    fields: [
      {
        field: 'lastOn',
        reason: `It ends on ${dayToWire(toOn)} already.`,
        fix: 'Enter an earlier day; a longer time needs an authorisation of its own.',
      },
    ],
  });
}

/** Locks the person, so that two authorisations at once see each other. Refuses: NOT_FOUND, WRONG_STATE. */
export async function lockPerson(
  tx: Tx,
  operatorId: number,
  id: string,
  { mustBeIn }: { readonly mustBeIn: boolean },
): Promise<void> {
  const [row] = await tx.$queryRaw<{ fullName: string; disabledAt: Date | null }[]>`
    SELECT full_name AS "fullName", disabled_at AS "disabledAt" FROM person
     WHERE operator_id = ${operatorId}::int AND id = ${id}::uuid FOR NO KEY UPDATE`;
  const person = orNotFound(row, 'person', 'personId');
  if (mustBeIn && person.disabledAt !== null)
    refuse({ code: 'WRONG_STATE', what: person.fullName, state: 'shut out', needed: 'able to sign in' });
}

/** Refuses a second authorisation of the same person, scope and type from the same day. */
export async function refuseSame(
  tx: Tx,
  operatorId: number,
  wanted: Pick<Authorisation, 'personId' | 'scope' | 'airframeTypeId' | 'fromOn'>,
): Promise<void> {
  const { personId, scope, airframeTypeId, fromOn } = wanted;
  const same = await tx.authorisation.findFirst({
    where: { operatorId, personId, scope, airframeTypeId, fromOn, voidedSeq: null },
    select: { reference: true },
  });
  if (same === null) return;
  refuse({
    code: 'ALREADY_EXISTS',
    what: `an authorisation of this person for ${scope} on this type (${same.reference}) from`,
    field: 'fromOn',
    value: dayToWire(fromOn),
  });
}

/** An authorisation that still counts, its person locked. Refuses: NOT_FOUND, ALREADY_VOIDED. */
export async function lockAuthorisation(tx: Tx, operatorId: number, id: string): Promise<Authorisation> {
  const where = { operatorId_id: { operatorId, id } };
  const { personId } = orNotFound(await tx.authorisation.findUnique({ where }), 'authorisation');
  await lockPerson(tx, operatorId, personId, { mustBeIn: false });
  const row = orNotFound(await tx.authorisation.findUnique({ where }), 'authorisation');
  if (row.voidedSeq !== null) refuse({ code: 'ALREADY_VOIDED', what: 'the authorisation' });
  return row;
}
