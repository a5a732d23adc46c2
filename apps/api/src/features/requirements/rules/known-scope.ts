import type { Tx } from '../../../platform/database/database.js';
import { orNotFound, refuse } from '../../../platform/problems/refusal.error.js';
import type { NewRequirementDto } from '../requirement.dto.js';

/** Refuses what names something that is not in the register. Refuses: NOT_FOUND, INVALID_FIELDS (codes, links). */
export async function refuseUnknownScope(
  tx: Tx,
  operatorId: number,
  asked: NewRequirementDto,
): Promise<void> {
  const { airframeTypeId, positionNumber, engineModelId } = asked;
  const byId = (id: string) => ({ where: { operatorId_id: { operatorId, id } }, select: { id: true } });
  if (airframeTypeId != null)
    orNotFound(await tx.airframeType.findUnique(byId(airframeTypeId)), 'type of airframe', 'airframeTypeId');
  if (engineModelId != null)
    orNotFound(await tx.engineModel.findUnique(byId(engineModelId)), 'engine model', 'engineModelId');
  if (positionNumber != null)
    orNotFound(
      await tx.typePosition.findFirst({
        where: { operatorId, number: positionNumber, ...(airframeTypeId == null ? {} : { airframeTypeId }) },
        select: { number: true },
      }),
      airframeTypeId == null ? 'position on any type of airframe' : 'position on this type of airframe',
      'positionNumber',
    );
  await refuseUnknownCodes(tx, operatorId, asked);
  await refuseUnknownLinks(tx, operatorId, asked);
}

async function refuseUnknownCodes(
  tx: Tx,
  operatorId: number,
  { onlyWith = [], unlessWith = [] }: NewRequirementDto,
): Promise<void> {
  const codes = [...onlyWith, ...unlessWith];
  if (codes.length === 0) return;
  const known = await tx.requirement.findMany({
    where: { operatorId, code: { in: codes }, voidedSeq: null },
    select: { code: true },
  });
  const unknown = codes.find((code) => known.every((row) => row.code !== code));
  if (unknown === undefined) return;
  refuse({
    code: 'INVALID_FIELDS',
    fields: [
      {
        field: onlyWith.includes(unknown) ? 'onlyWith' : 'unlessWith',
        reason: `No requirement has the code ${unknown}.`,
        fix: 'Record that bulletin or directive first, or correct the code.',
      },
    ],
  });
}

async function refuseUnknownLinks(
  tx: Tx,
  operatorId: number,
  { code, ...asked }: NewRequirementDto,
): Promise<void> {
  for (const field of ['supersedesId', 'terminatesId'] as const) {
    const id = asked[field];
    if (id == null) continue;
    const other = orNotFound(
      await tx.requirement.findUnique({
        where: { operatorId_id: { operatorId, id } },
        select: { code: true, voidedSeq: true },
      }),
      'requirement',
      field,
    );
    const isSame = other.code === code;
    if (!isSame && other.voidedSeq === null) continue;
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field,
          reason: isSame
            ? 'It has the same code: a revision takes the place of another by itself.'
            : 'It is voided.',
          fix: 'Choose a requirement of another code that stands, or leave it out.',
        },
      ],
    });
  }
}
