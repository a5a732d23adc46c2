import type { Tx } from '../../platform/database/database.js';
import type { Prisma } from '../../platform/database/generated/client.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';

/** What a component is shown with. */
export const NAMED = {
  select: {
    id: true,
    kind: true,
    partNumber: true,
    serialNumber: true,
    description: true,
    engineModelId: true,
  },
} as const satisfies Prisma.ComponentDefaultArgs;

/** A visit with what it is shown with, its return that counts included. */
export const WITH_RETURN = {
  component: NAMED,
  location: { select: { name: true } },
  shopReturnByVisit: {
    where: { voidedSeq: null },
    include: {
      location: { select: { name: true } },
      shopChangeByReturn: {
        orderBy: [{ at: 'asc' }, { id: 'asc' }],
        include: {
          slot: { select: { name: true, component: { select: { serialNumber: true } } } },
          outgoing: NAMED,
          incoming: NAMED,
          removedTo: { select: { name: true } },
        },
      },
    },
  },
  resetByShopVisit: {
    where: { voidedSeq: null },
    orderBy: { id: 'asc' },
    include: { component: { select: { serialNumber: true } } },
  },
} as const satisfies Prisma.ShopVisitInclude;

/** The same in a list. */
export const IN_LIST = {
  component: NAMED,
  location: { select: { name: true } },
  shopReturnByVisit: {
    where: { voidedSeq: null },
    select: { returnedAt: true, report: true, certificate: true },
  },
} as const satisfies Prisma.ShopVisitInclude;

export type ListedVisit = Prisma.ShopVisitGetPayload<{ include: typeof IN_LIST; omit: { build: true } }>;

export type VisitRow = Prisma.ShopVisitGetPayload<{ include: typeof WITH_RETURN }>;

/** The visit with its return. Refuses: NOT_FOUND. */
export async function findVisit(tx: Tx, operatorId: number, id: string): Promise<VisitRow> {
  const where = { operatorId_id: { operatorId, id } };
  return orNotFound(await tx.shopVisit.findUnique({ where, include: WITH_RETURN }), 'shop visit');
}

/** A location by its name. Refuses: NOT_FOUND, REFUSED_BY_FACTS (of a kind nothing comes back from, or not the one asked). */
export async function locationNamed(
  tx: Tx,
  operatorId: number,
  name: string,
  { kinds, field, fix }: { readonly kinds: readonly string[]; readonly field: string; readonly fix: string },
): Promise<{ readonly id: string; readonly name: string; readonly kind: string }> {
  const location = await tx.location.findFirst({ where: { operatorId, name } });
  if (location === null) refuse({ code: 'NOT_FOUND', what: `location ${name}`, field });
  if (!kinds.includes(location.kind))
    refuse({
      code: 'REFUSED_BY_FACTS',
      field,
      reason: `${name} is a location of kind '${location.kind}'.`,
      fix,
    });
  return location;
}
