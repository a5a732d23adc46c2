import type { BuildStandard } from '../../server/shops/shop-records.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { FactList } from '../../ui/page/fact-list.js';
import { SerialText } from '../../ui/status/serial-text.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { COUNTER_WORDS, lifeText, pairText } from './build-words.js';

type BuiltSlot = BuildStandard['slots'][number];

const COLUMNS: readonly Column<BuiltSlot>[] = [
  {
    id: 'place',
    header: 'Place',
    namesRow: true,
    cell: ({ name, depth }) => <span className={`build-depth-${Math.min(depth, 3)}`}>{name}</span>,
  },
  {
    id: 'serial',
    header: 'Serial',
    cell: ({ component }) =>
      component === null ? (
        <span className="quiet">Empty</span>
      ) : (
        <RouteLink href={`/components/${component.componentId}`}>
          <SerialText>{component.serialNumber}</SerialText>
        </RouteLink>
      ),
  },
  {
    id: 'part',
    header: 'Part number',
    cell: ({ component }) => component !== null && <SerialText>{component.partNumber}</SerialText>,
  },
  {
    id: 'since',
    header: 'Since new',
    cell: ({ component }) => component !== null && pairText(component.sinceNew),
  },
  {
    id: 'left',
    header: 'Left',
    cell: ({ component }) =>
      component === null || !component.lifeLimited ? (
        <span className="quiet">No limit</span>
      ) : (
        lifeText(component.life)
      ),
  },
];

/** Each place followed by those in what is there. */
function inTreeOrder(slots: readonly BuiltSlot[]): readonly BuiltSlot[] {
  const beneath = (parentId: string | undefined): readonly BuiltSlot[] =>
    slots
      .filter((slot) => slot.parentId === parentId)
      .flatMap((slot) => [slot, ...(slot.component === null ? [] : beneath(slot.component.componentId))]);
  return beneath(slots[0]?.parentId);
}

/** A build standard as it was kept: counters, and place by place what was in it. */
export function BuildTable({ build, caption }: { readonly build: BuildStandard; readonly caption: string }) {
  const counters = (Object.keys(COUNTER_WORDS) as (keyof typeof COUNTER_WORDS)[]).map(
    (counter) => [COUNTER_WORDS[counter], pairText(build[counter])] as const,
  );
  return (
    <div className="stack">
      <FactList facts={[...counters, ['Rating', build.ratingCode ?? 'None recorded']]} />
      <DataTable
        caption={caption}
        captionHidden
        columns={COLUMNS}
        rows={inTreeOrder(build.slots)}
        rowKey={({ slotId }) => slotId}
        empty={<p>There are no places in it.</p>}
      />
    </div>
  );
}
