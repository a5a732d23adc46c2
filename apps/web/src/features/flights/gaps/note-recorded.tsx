import { useEffect, useRef } from 'react';
import { Button } from '../../../ui/actions/button.js';

interface NoteRecordedProps {
  /** What was done: 'The gap before log page 0419 is explained'. */
  readonly what: string;
  readonly onClose: () => void;
}

/** What an act on a note did. Stays until closed. */
export function NoteRecorded({ what, onClose }: NoteRecordedProps) {
  const box = useRef<HTMLElement>(null);
  // The button that began the act is gone from its row: the reader goes on here.
  useEffect(() => box.current?.focus(), []);
  return (
    <section className="panel" ref={box} tabIndex={-1} aria-label={what}>
      <h2>{what}</h2>
      <p>Release checks of this aircraft look at its log anew.</p>
      <Button onClick={onClose}>Close this message</Button>
    </section>
  );
}
