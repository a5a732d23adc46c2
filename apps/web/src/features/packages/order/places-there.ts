import { useQuery } from '@tanstack/react-query';
import { componentQuery } from '../../../server/components.js';
import { positionsQuery } from '../../../server/fleet.js';
import type { ChangeSlot, PositionView, Slot } from '../../../server/wire.js';
import type { OrderDraft, OrderOn, Standing } from './order-draft.js';

/** A place that can be ordered to change, with what stands in it. */
export interface OrderPlace {
  readonly value: string;
  readonly label: string;
  readonly kind: string;
  /** Null for a place inside a component. */
  readonly positionId: string | null;
  readonly there: Standing | null;
}

/** The auxiliary power unit last, as on the board. */
const inOrder = (all: readonly PositionView[]): readonly PositionView[] => [
  ...all.filter(({ kind }) => kind !== 'apu'),
  ...all.filter(({ kind }) => kind === 'apu'),
];

function thereAt({ engine, pod }: PositionView, slot: ChangeSlot): Standing | null {
  if (slot === 'pod') return pod === null ? null : { ...pod, partNumber: null, description: 'Pod' };
  if (engine === null) return null;
  const { id, serialNumber, partNumber, model } = engine;
  return { id, serialNumber, partNumber, description: `${model ?? 'Engine'}, part number ${partNumber}` };
}

const fits = (position: PositionView, slot: ChangeSlot): boolean =>
  (position.kind === 'apu') === (slot === 'apu');

function positionPlace(position: PositionView, slot: ChangeSlot): OrderPlace {
  const there = thereAt(position, slot);
  const where = position.kind === 'apu' ? 'APU' : `Position ${position.number}`;
  return {
    value: String(position.number),
    label: `${where}: ${there?.serialNumber ?? 'empty'}`,
    kind: slot,
    positionId: position.positionId,
    there,
  };
}

/** Every place of a component, down through its modules. */
function slotPlaces(slots: readonly Slot[]): OrderPlace[] {
  return slots.flatMap(({ id, name, kind, component }) => [
    {
      value: id,
      label: `${name}: ${component?.serialNumber ?? 'empty'}`,
      kind,
      positionId: null,
      there:
        component === null
          ? null
          : {
              id: component.id,
              serialNumber: component.serialNumber,
              partNumber: component.partNumber,
              description: `${component.description}, part number ${component.partNumber}`,
            },
    },
    ...slotPlaces(component?.slots ?? []),
  ]);
}

interface Places {
  readonly reading: boolean;
  readonly all: readonly OrderPlace[];
  readonly chosen: OrderPlace | null;
}

/** The places an order can be about, and the one it is about. */
export function useOrderPlaces(on: OrderOn, { slot, positionNumber, slotId }: OrderDraft): Places {
  const positions = useQuery(positionsQuery(on.kind === 'airframe' ? on.id : ''));
  const component = useQuery(componentQuery(on.kind === 'component' ? on.id : ''));
  const all =
    on.kind === 'airframe'
      ? inOrder(positions.data?.positions ?? [])
          .filter((position) => fits(position, slot))
          .map((position) => positionPlace(position, slot))
      : slotPlaces(component.data?.slots ?? []);
  const wanted = on.kind === 'airframe' ? positionNumber : slotId;
  return {
    reading: on.kind === 'airframe' ? positions.isPending : component.isPending,
    all,
    chosen: all.find(({ value }) => value === wanted) ?? null,
  };
}
