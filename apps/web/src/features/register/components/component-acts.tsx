import { useEffect, useRef, useState } from 'react';
import { useMay } from '../../../server/authority.js';
import type { Component } from '../../../server/components.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { Consequences } from '../../../ui/consequences/consequences.js';
import { announce } from '../../../ui/messages/announcements.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { AcceptanceForm } from '../openings/acceptance-form.js';
import type { RecordedFact } from '../openings/fact-acts.js';
import { GapForm } from '../openings/gap-form.js';
import { OpeningForm } from '../openings/opening-form.js';
import { RatingForm } from '../openings/rating-form.js';
import { ResetForm } from '../openings/reset-form.js';
import { MoveForm } from '../placing/move-form.js';

export const ASKED = ['opening', 'rating', 'reset', 'gap', 'acceptance', 'move'] as const;

/** What is recorded of a component by hand. */
export type AskedAct = (typeof ASKED)[number];

const TITLES: Readonly<Record<AskedAct, string>> = {
  opening: 'Record an opening balance',
  rating: 'Record a rating',
  reset: 'Record an overhaul, shop visit or repair',
  gap: 'Record a gap in its records',
  acceptance: 'Accept the worst case',
  move: 'Move to a location',
};

const DONE: Readonly<Record<AskedAct, string>> = {
  opening: 'The opening balance was recorded.',
  rating: 'The rating was recorded.',
  reset: 'It was recorded.',
  gap: 'The gap was recorded.',
  acceptance: 'The acceptance was recorded.',
  move: 'The move was recorded.',
};

/** What is shown of an act that was done: its words, and what it newly breaks. */
export interface DoneAct {
  readonly what: string;
  readonly recorded: RecordedFact;
}

/** What an act on the component's records did; it stays until closed. */
export function DoneNote({ done, onClose }: { readonly done: DoneAct; readonly onClose: () => void }) {
  const box = useRef<HTMLElement>(null);
  // The button that began the act may be gone with its row: the reader goes on here.
  useEffect(() => box.current?.focus(), []);
  return (
    <section className="panel" ref={box} tabIndex={-1} aria-label={done.what}>
      <h2>{done.what}</h2>
      <Consequences broken={done.recorded.consequences} />
      <Button onClick={onClose}>Close this message</Button>
    </section>
  );
}

interface ComponentActsProps {
  readonly component: Component;
  /** What the address asks to record at once. */
  readonly asked: AskedAct | undefined;
  readonly onDone: (done: DoneAct) => void;
}

/** Everything that is recorded of a component by hand. */
export function ComponentActs({ component, asked: first, onDone }: ComponentActsProps) {
  const may = useMay('keep-records');
  const off = useOfflineSince() === null ? null : OFF_WHILE_OFFLINE;
  const [asked, setAsked] = useState<AskedAct | null>(first ?? null);
  if (!may) return null;
  const rated = component.kind === 'engine' || component.kind === 'apu';
  const offered = ASKED.filter((act) => act !== 'rating' || rated);
  const close = () => setAsked(null);
  const done = () => {
    if (asked !== null) announce(DONE[asked]);
    close();
  };
  const recorded = (recordedFact: RecordedFact) => {
    if (asked !== null) onDone({ what: DONE[asked], recorded: recordedFact });
    close();
  };
  return (
    <>
      <div className="row no-print">
        {offered.map((act) => (
          <Button key={act} offBecause={off} onClick={() => setAsked(act)}>
            {TITLES[act]}
          </Button>
        ))}
      </div>
      {asked !== null && (
        <SheetDialog title={TITLES[asked]} shape="sheet" open onClose={close}>
          {asked === 'opening' && (
            <OpeningForm
              subject={{ kind: 'component', id: component.id, engineModelId: component.engineModelId }}
              onAdded={done}
            />
          )}
          {asked === 'rating' && <RatingForm component={component} onDone={recorded} />}
          {asked === 'reset' && <ResetForm component={component} onDone={recorded} />}
          {asked === 'gap' && <GapForm component={component} onDone={recorded} />}
          {asked === 'acceptance' && <AcceptanceForm component={component} onDone={recorded} />}
          {asked === 'move' && <MoveForm component={component} onMoved={done} />}
        </SheetDialog>
      )}
    </>
  );
}
