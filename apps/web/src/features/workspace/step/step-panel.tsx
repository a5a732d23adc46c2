import { type RefObject, useEffect, useRef } from 'react';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { Notice } from '../../../ui/messages/notice.js';
import { CapturePart } from '../captures/capture-part.js';
import { waitingWords } from '../lanes/standing.js';
import { SignArea } from '../signing/sign-area.js';
import { SignatureList } from '../signing/signature-list.js';
import { useDesk } from '../work/use-desk.js';
import type { Step } from '../work/work-shapes.js';
import './step.css';

/** What may hurt or break, before the action. */
function Cautions({ cautions }: { readonly cautions: readonly string[] }) {
  if (cautions.length === 0) return null;
  return (
    <Notice kind="caution">
      <ul className="cautions">
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </Notice>
  );
}

/** Whose data the step follows, and who has the last word. */
function Governing({ step: { definition } }: { readonly step: Step }) {
  const { source } = definition;
  return (
    <p className="governing">
      {source === null ? (
        <>No document is named for this step. </>
      ) : (
        <>
          <strong>
            {source.document}, revision {source.revision}.
          </strong>{' '}
        </>
      )}
      Approved data, the authority and licensed staff govern; these cautions are reminders.
    </p>
  );
}

/** The steps that come first, as links to them. */
function WaitsFor({ step: { blockers } }: { readonly step: Step }) {
  const { hrefOf } = useDesk();
  if (blockers.length === 0) return null;
  return (
    <div className="waits-for">
      <h4>Waits for</h4>
      <ul className="plain-list">
        {blockers.map((blocker) => (
          <li key={`${blocker.stepId} ${blocker.code}`}>
            <RouteLink href={hrefOf(blocker.stepId)}>
              {waitingWords(blocker)}: {blocker.title}
            </RouteLink>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Where a key led: to the first field, or to the signature. Each press counts anew. */
export interface Led {
  readonly to: 'reading' | 'signature';
  readonly press: number;
}

const FOUND = {
  reading: '.capture-form :is(input, textarea, select, button):not([disabled])',
  signature: '.sign-area button',
} as const;

/** Once the last thing asked for is captured, its form is gone: the signature comes into sight, and has the focus. */
function useSignatureNext(step: Step, body: RefObject<HTMLDivElement | null>): void {
  const asked = step.missing.length;
  const before = useRef(asked);
  useEffect(() => {
    const last = before.current > 0 && asked === 0;
    before.current = asked;
    const button = last ? body.current?.querySelector<HTMLElement>(FOUND.signature) : null;
    button?.focus({ preventScroll: true });
    button?.scrollIntoView({ block: 'center' });
  }, [asked, body]);
}

interface StepPanelProps {
  readonly step: Step;
  readonly led: Led | null;
}

/** One step: cautions, words, source, what it waits for, what it captures, and its signatures. */
export function StepPanel({ step, led }: StepPanelProps) {
  const { text, cautions, captures } = step.definition;
  const body = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (led !== null) body.current?.querySelector<HTMLElement>(FOUND[led.to])?.focus();
  }, [led]);
  useSignatureNext(step, body);
  return (
    <div className="stack" ref={body}>
      <Cautions cautions={cautions} />
      {text !== null && <p>{text}</p>}
      <Governing step={step} />
      <WaitsFor step={step} />
      <div className="captures">
        {captures.map((capture) => (
          <CapturePart key={capture.key} step={step} capture={capture} />
        ))}
      </div>
      <SignatureList step={step} />
      <SignArea step={step} />
    </div>
  );
}
