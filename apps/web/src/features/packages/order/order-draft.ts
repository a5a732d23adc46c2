import type { ChangeSlot } from '../../../server/wire.js';
import type { Order, OrderRequest } from '../../../server/work.js';

/** What is ordered, as typed. */
export interface OrderDraft {
  /** Of an airframe. */
  readonly positionNumber: string;
  readonly slot: ChangeSlot;
  /** Of a component: the place inside it. */
  readonly slotId: string;
  readonly putsOn: boolean;
  readonly incomingSerial: string;
  readonly ratingCode: string;
  readonly removedTo: string;
  readonly reason: string;
}

export const EMPTY_ORDER: OrderDraft = {
  positionNumber: '',
  slot: 'engine',
  slotId: '',
  putsOn: true,
  incomingSerial: '',
  ratingCode: '',
  removedTo: '',
  reason: '',
};

/** What stands at a place now. */
export interface Standing {
  readonly id: string;
  readonly serialNumber: string;
  /** Null where it was not read. */
  readonly partNumber: string | null;
  /** 'K84 engine, part number K84-0001' */
  readonly description: string;
}

/** Where the order is: positions of an airframe, or places inside a component. */
export interface OrderOn {
  readonly kind: 'airframe' | 'component';
  readonly id: string;
}

/** The controls' ids, by the server's names of the fields. */
export const ORDER_IDS = {
  'order.positionNumber': 'order-position',
  'order.slot': 'order-slot',
  'order.slotId': 'order-place',
  'order.outgoingSerial': 'order-removed-to',
  'order.removedToLocation': 'order-removed-to',
  'order.incomingSerial': 'order-incoming',
  'order.ratingCode': 'order-rating',
  'order.reason': 'order-reason',
} as const satisfies Record<string, string>;

export type OrderField = keyof typeof ORDER_IDS;
export type OrderFaults = Partial<Record<OrderField, string>>;

/** What is missing in the order; the server is the judge of the rest. */
export function orderFaults(draft: OrderDraft, on: OrderOn, there: Standing | null): OrderFaults {
  const faults: OrderFaults = {};
  if (on.kind === 'airframe' && draft.positionNumber === '')
    faults['order.positionNumber'] = 'Choose the position';
  if (on.kind === 'component' && draft.slotId === '')
    faults['order.slotId'] = 'Choose the place inside the component';
  if (there !== null && draft.removedTo === '')
    faults['order.removedToLocation'] = 'Choose where the removed one goes';
  if (draft.putsOn && draft.incomingSerial === '')
    faults['order.incomingSerial'] = 'Choose the serial that goes on';
  if (!draft.putsOn && there === null)
    faults['order.incomingSerial'] = 'The place is empty: choose what goes on';
  if (draft.reason.trim() === '') faults['order.reason'] = 'Enter why it is changed';
  return faults;
}

/** The request an order without faults means. */
export function orderRequest(draft: OrderDraft, on: OrderOn, there: Standing | null): OrderRequest {
  return {
    ...(on.kind === 'airframe'
      ? { positionNumber: Number(draft.positionNumber), slot: draft.slot }
      : { slotId: draft.slotId }),
    ...(there === null ? {} : { outgoingSerial: there.serialNumber, removedToLocation: draft.removedTo }),
    ...(draft.putsOn ? { incomingSerial: draft.incomingSerial } : {}),
    ...(draft.putsOn && draft.ratingCode !== '' ? { ratingCode: draft.ratingCode } : {}),
    reason: draft.reason.trim(),
  };
}

/** An order on record as a draft, to be amended. */
export function draftOf(order: Order): OrderDraft {
  const { slot, slotId, positionNumber, incoming, ratingCode, removedToLocation, reason } = order;
  return {
    positionNumber: positionNumber === null ? '' : String(positionNumber),
    slot: slot === 'pod' || slot === 'apu' ? slot : 'engine',
    slotId: positionNumber === null ? slotId : '',
    putsOn: incoming !== null,
    incomingSerial: incoming?.serialNumber ?? '',
    ratingCode: ratingCode ?? '',
    removedTo: removedToLocation ?? '',
    reason,
  };
}
