import { type ReactNode, useEffect, useRef } from 'react';
import { momentText } from '../../../format/when.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { countingOf } from '../signing/may-sign.js';
import type { Step } from '../work/work-shapes.js';
import { waitingWords } from './standing.js';

/** What stands below the title: whom it waits for, or who signed it. */
function Below({ step }: { readonly step: Step }) {
  const { standing, blockers } = step;
  const done = countingOf(step, 'done');
  const looked = countingOf(step, 'inspection');
  if (standing === 'blocked' && blockers.length > 0)
    return <span className="step-below">Waits for {blockers.map(waitingWords).join(', ')}</span>;
  if (done === null) return null;
  return (
    <span className="step-below">
      {done.personName}, {momentText(done.performedAt)}
      {looked !== null && `; inspected by ${looked.personName}`}
    </span>
  );
}

/** Where the top of a step must stand so that its cautions are in sight, of the height of the window. */
const UPPER_PART = 0.6;

/** Brings a step into sight by its top, unless that stands in the upper part of the window already. */
function showFromTop(row: HTMLElement | null): void {
  if (row === null) return;
  const { top } = row.getBoundingClientRect();
  const covered = Number.parseFloat(getComputedStyle(document.documentElement).scrollPaddingTop) || 0;
  if (top < covered || top > window.innerHeight * UPPER_PART) row.scrollIntoView({ block: 'start' });
}

interface StepRowProps {
  readonly step: Step;
  readonly open: boolean;
  readonly onToggle: () => void;
  readonly children: ReactNode;
}

/** One step in its lane, and its panel below it while it is open. */
export function StepRow({ step, open, onToggle, children }: StepRowProps) {
  const { id, definition, standing } = step;
  const row = useRef<HTMLLIElement>(null);
  // A long panel is read from its top, where the cautions are, also when one above it has just closed.
  useEffect(() => {
    if (open) showFromTop(row.current);
  }, [open]);
  return (
    <li className={open ? 'step step-open' : 'step'} ref={row} id={`step-${id}`}>
      <button
        type="button"
        className="step-row"
        data-step-row={id}
        aria-expanded={open}
        aria-controls={open ? `panel-${id}` : undefined}
        onClick={onToggle}
      >
        <StatusMark status={standing} />
        <span className="step-number">{definition.number}</span>
        <span className="step-words">
          <span className="step-title">{definition.title}</span>
          {definition.inspection === 'independent' && (
            <span className="step-held">Needs a second person</span>
          )}
          <Below step={step} />
        </span>
      </button>
      {open && (
        <section className="step-panel" id={`panel-${id}`} aria-label={`Step ${definition.number}`}>
          {children}
        </section>
      )}
    </li>
  );
}
