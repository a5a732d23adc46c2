import type { Capture } from '@strutbook/domain/work/capture.js';
import { type ReactNode, useState } from 'react';
import { momentText } from '../../../format/when.js';
import { useMay } from '../../../server/authority.js';
import { Button } from '../../../ui/actions/button.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { AttemptList } from '../attempts/attempt-list.js';
import { countingOf } from '../signing/may-sign.js';
import { TorqueForm } from '../torque/torque-form.js';
import { isFrozen, useDesk, useEntryOff } from '../work/use-desk.js';
import type { Step } from '../work/work-shapes.js';
import { askedWords } from './asked-words.js';
import { captureStanding, holdsSignature } from './capture-entries.js';
import { ComponentForm } from './component-form.js';
import { LeakForm } from './leak-form.js';
import { PapersForm } from './papers-form.js';
import { PhotoForm } from './photo-form.js';
import { CheckForm, CountForm, TextForm } from './plain-forms.js';
import { ReadingsForm } from './readings-form.js';
import './captures.css';

interface PartProps {
  readonly step: Step;
  readonly capture: Capture;
}

/** The form that fits what is asked for. */
function FormOf({ step, capture }: PartProps) {
  switch (capture.kind) {
    case 'torque':
      return <TorqueForm step={step} capture={capture} />;
    case 'component-off':
    case 'component-on':
      return <ComponentForm step={step} capture={capture} />;
    case 'papers':
      return <PapersForm step={step} capture={capture} />;
    case 'count':
      return <CountForm step={step} capture={capture} />;
    case 'leak-check':
      return <LeakForm step={step} capture={capture} />;
    case 'readings':
      return <ReadingsForm step={step} capture={capture} />;
    case 'text':
      return <TextForm step={step} capture={capture} />;
    case 'check':
      return <CheckForm step={step} capture={capture} />;
    case 'photo':
      return <PhotoForm step={step} capture={capture} />;
  }
}

/** Told before: what a new entry does to the signature that stands. */
function Anew({ step, onAnew }: { readonly step: Step; readonly onAnew: () => void }) {
  const done = countingOf(step, 'done');
  return (
    <div className="anew">
      <p>
        Signed
        {done !== null && ` by ${done.personName}, ${momentText(done.signedAt)}`}. What is signed is never
        edited. A new entry leaves the signature in sight, but it no longer counts: the step must be signed
        again.
      </p>
      <Button onClick={onAnew}>Enter anew</Button>
    </div>
  );
}

const optional = (capture: Capture): boolean =>
  (capture.kind === 'text' || capture.kind === 'photo') && !capture.required;

function Mark({ step, capture }: PartProps) {
  const standing = captureStanding(step, capture);
  if (standing === 'accepted') return <StatusMark status="signed" word="Captured" />;
  if (standing === 'rejected') return <StatusMark status="rejected" />;
  return optional(capture) ? (
    <StatusMark status="not-applicable" word="Optional" />
  ) : (
    <StatusMark status="open" word="To capture" />
  );
}

/** For those who may not enter anything: what is asked for. */
function Asked({ capture }: { readonly capture: Capture }) {
  const words = askedWords(capture);
  return words === '' ? null : <p className="quiet">Asked for: {words}.</p>;
}

/** Whether the form stands open: not while a signature counts, nor, unless asked, once it is captured. */
function useFormOpen({ step, capture }: PartProps): {
  readonly open: boolean;
  readonly instead: ReactNode;
} {
  const { work } = useDesk();
  const may = useMay('sign-steps');
  const off = useEntryOff();
  const [anew, setAnew] = useState(false);
  if (!may && !isFrozen(work)) return { open: false, instead: <Asked capture={capture} /> };
  if (isFrozen(work)) return { open: false, instead: null };
  if (anew) return { open: true, instead: null };
  if (holdsSignature(step))
    return { open: false, instead: off === null ? <Anew step={step} onAnew={() => setAnew(true)} /> : null };
  if (captureStanding(step, capture) === 'accepted')
    return {
      open: false,
      instead:
        off === null ? (
          <div>
            <Button kind="quiet" onClick={() => setAnew(true)}>
              Enter again
            </Button>
          </div>
        ) : null,
    };
  return { open: true, instead: null };
}

/** One thing the step asks for: how it stands, every attempt, and the form for the next. */
export function CapturePart(props: PartProps) {
  const { step, capture } = props;
  const { open, instead } = useFormOpen(props);
  return (
    <section className="capture" aria-label={capture.label}>
      <h4 className="capture-head">
        <span>{capture.label}</span>
        <Mark {...props} />
      </h4>
      <AttemptList step={step} capture={capture} />
      {instead}
      {open && <FormOf {...props} />}
    </section>
  );
}
