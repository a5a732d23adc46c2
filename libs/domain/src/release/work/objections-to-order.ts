import type { Objection } from '../objection.js';
import type { NamedComponent, OrderSnapshot } from '../work-snapshot.js';

/** What is held against an ordered change: it was not made, or something else was changed or is there now. Total. */
export function objectionsToOrder(
  { place, positionNumber, outgoing, incoming, made, installedNow }: OrderSnapshot,
  { packageId }: { readonly packageId: string },
): readonly Objection[] {
  const held = (code: 'ORDER_NOT_MADE' | 'ORDER_DIFFERS', why: string): Objection => ({
    code,
    severity: 'blocking',
    positionNumber,
    record: { kind: 'package', id: packageId },
    detail: { place, why },
  });
  const half = made?.outgoingId === idOf(outgoing) && made.incomingId === null && incoming !== null;
  if (made === null)
    return [held('ORDER_NOT_MADE', `Ordered: ${told(outgoing, incoming)}. Nothing was changed there.`)];
  if (half)
    return [held('ORDER_NOT_MADE', `Ordered: ${told(outgoing, incoming)}. Nothing is installed yet.`)];
  if (made.outgoingId !== idOf(outgoing) || made.incomingId !== idOf(incoming))
    return [held('ORDER_DIFFERS', `Ordered: ${told(outgoing, incoming)}. Something else was changed there.`)];
  if (idOf(installedNow) !== idOf(incoming))
    return [
      held(
        'ORDER_DIFFERS',
        `Ordered: ${told(outgoing, incoming)}. ${installedNow === null ? 'Nothing' : `Serial ${installedNow.serial}`} is there now.`,
      ),
    ];
  return [];
}

function idOf(component: NamedComponent | null): string | null {
  return component?.id ?? null;
}

function told(outgoing: NamedComponent | null, incoming: NamedComponent | null): string {
  return [
    ...(outgoing === null ? [] : [`serial ${outgoing.serial} off`]),
    ...(incoming === null ? [] : [`serial ${incoming.serial} on`]),
  ].join(', ');
}
