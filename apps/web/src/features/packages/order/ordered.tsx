import type { Order, OrderedComponent } from '../../../server/work.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { type Fact, FactList } from '../../../ui/page/fact-list.js';
import { SerialText } from '../../../ui/status/serial-text.js';

/** 'Engine at position 3', 'HPT disk 1' */
function orderPlace({ slot, slotName, positionNumber }: Order): string {
  if (positionNumber === null) return slotName;
  if (slot === 'apu') return 'APU';
  return `${slot === 'pod' ? 'Pod' : 'Engine'} at position ${positionNumber}`;
}

function Ordered({ component, nothing }: { component: OrderedComponent | null; nothing: string }) {
  if (component === null) return nothing;
  return (
    <>
      <RouteLink href={`/components/${component.id}`}>
        <SerialText>{component.serialNumber}</SerialText>
      </RouteLink>
      , {component.description}
    </>
  );
}

/** What is ordered to be changed, as the order stands. */
export function OrderPart({ order }: { readonly order: Order }) {
  const { outgoing, incoming, removedToLocation, ratingCode, reason, confirmedBy } = order;
  const facts: readonly Fact[] = [
    [
      'Comes off',
      <>
        <Ordered component={outgoing} nothing="Nothing: the place is empty" />
        {outgoing !== null && removedToLocation !== null && `, goes to ${removedToLocation}`}
      </>,
    ],
    [
      'Goes on',
      <>
        <Ordered component={incoming} nothing="Nothing: the place stays empty" />
        {ratingCode !== null && `, rating ${ratingCode} from then on`}
      </>,
    ],
    ['Why', reason],
    ...(confirmedBy === null ? [] : [['Amended', `Confirmed by ${confirmedBy}`] as const]),
  ];
  return (
    <section className="stack" aria-labelledby="order">
      <h2 id="order" className="section-heading">
        Order: {orderPlace(order)}
      </h2>
      <FactList className="package-facts" facts={facts} />
    </section>
  );
}
