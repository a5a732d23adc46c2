import { useState } from 'react';
import { useMay } from '../../../server/authority.js';
import type { Slot } from '../../../server/components.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { announce } from '../../../ui/messages/announcements.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { PlaceForm } from '../placing/place-form.js';

interface SlotListProps {
  /** 'KT-442' */
  readonly parent: string;
  readonly slots: readonly Slot[];
  readonly onPlace: ((slot: Slot, parent: string) => void) | null;
}

function SlotLine({ slot, parent, onPlace }: Omit<SlotListProps, 'slots'> & { readonly slot: Slot }) {
  const { component, name, lifeLimited } = slot;
  return (
    <div className="slot-line">
      <strong>{name}</strong>
      {component === null ? (
        <span>{lifeLimited ? <StatusMark status="blocked" word="Empty, blocks a release" /> : 'Empty'}</span>
      ) : (
        <RouteLink href={`/register/components/${component.id}`}>
          {component.description} <span className="serial">{component.serialNumber}</span>{' '}
          <span className="quiet serial">{component.partNumber}</span>
        </RouteLink>
      )}
      {component === null && onPlace !== null ? (
        <Button aria-label={`Install in ${name} of ${parent}`} onClick={() => onPlace(slot, parent)}>
          Install
        </Button>
      ) : (
        <span />
      )}
    </div>
  );
}

/** The places in a component, with what is in them, all the way down. */
function SlotTree({ parent, slots, onPlace }: SlotListProps) {
  return (
    <ul className="slots" aria-label={`Places in ${parent}`}>
      {slots.map((slot) => (
        <li key={slot.id} className="slot">
          <SlotLine slot={slot} parent={parent} onPlace={onPlace} />
          {slot.component !== null && slot.component.slots.length > 0 && (
            <SlotTree parent={slot.component.serialNumber} slots={slot.component.slots} onPlace={onPlace} />
          )}
        </li>
      ))}
    </ul>
  );
}

interface SlotsProps {
  readonly parent: string;
  readonly slots: readonly Slot[];
  readonly airframeKnown: boolean;
}

/** Building a component: every place, and installing what belongs there. */
export function Slots({ parent, slots, airframeKnown }: SlotsProps) {
  const may = useMay('keep-records');
  const offline = useOfflineSince() !== null;
  const [asked, setAsked] = useState<{ readonly slot: Slot; readonly parent: string } | null>(null);
  const close = () => setAsked(null);
  return (
    <>
      <SlotTree
        parent={parent}
        slots={slots}
        onPlace={may && !offline ? (slot, of) => setAsked({ slot, parent: of }) : null}
      />
      {may && offline && <p className="quiet small">Installing: {OFF_WHILE_OFFLINE.toLowerCase()}.</p>}
      {asked !== null && (
        <SheetDialog
          title={`Install in ${asked.slot.name} of ${asked.parent}`}
          shape="sheet"
          open
          onClose={close}
        >
          <PlaceForm
            slotId={asked.slot.id}
            kind={asked.slot.kind}
            airframeKnown={airframeKnown}
            onPlaced={(serial) => {
              announce(`${serial} is in ${asked.slot.name} of ${asked.parent}.`);
              close();
            }}
          />
        </SheetDialog>
      )}
    </>
  );
}
