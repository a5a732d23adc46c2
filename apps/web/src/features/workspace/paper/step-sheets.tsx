import type { Capture } from '@strutbook/domain/work/capture.js';
import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { minuteNow } from '../../../format/now.js';
import { momentText } from '../../../format/when.js';
import { PrintSheet, SignatureBlank } from '../../../ui/print/print-sheet.js';
import { typedWords } from '../attempts/typed-words.js';
import { askedWords } from '../captures/asked-words.js';
import { entriesOf } from '../captures/capture-entries.js';
import { type Group, groupsOf, signedOf } from '../lanes/lane-parts.js';
import { PodPicture } from '../picture/pod-picture.js';
import { countingOf } from '../signing/may-sign.js';
import type { Entry, Signature, Step, Work } from '../work/work-shapes.js';
import { blanksOf, orderWords } from './sheet-words.js';
import './paper.css';

function EntryLine({ capture, entry }: { readonly capture: Capture; readonly entry: Entry }) {
  const { typed, judgement, tool, personName, enteredAt, voided, voidReason } = entry;
  const words = typedWords(capture, typed, judgement);
  return (
    <li>
      {voided ? <s>{words}</s> : words}
      {voided ? ` (struck out: ${voidReason})` : ` \u2013 ${judgement.verdict}`}
      {judgement.computed['required'] != null && `, required ${judgement.computed['required']}`}
      {tool !== null && `, tool ${tool}`}; {personName}, {momentText(enteredAt)}
    </li>
  );
}

function CaptureLines({ step, capture }: { readonly step: Step; readonly capture: Capture }) {
  const entries = entriesOf(step, capture);
  const asked = askedWords(capture);
  return (
    <div className="sheet-capture">
      <p>
        <strong>{capture.label}</strong>
        {asked !== '' && `: ${asked}`}
      </p>
      {entries.length > 0 && (
        <ul>
          {entries.map((entry) => (
            <EntryLine key={entry.id} capture={capture} entry={entry} />
          ))}
        </ul>
      )}
      {blanksOf(step, capture).map((blank) => (
        <p key={blank} className="sheet-blank">
          {blank}
        </p>
      ))}
    </div>
  );
}

function SignatureLine({ signature }: { readonly signature: Signature }) {
  const { meaning, personName, licence, performedAt, signedAt, undone, undoneReason, counts } = signature;
  const words = `${meaning === 'done' ? 'Done' : 'Inspected'} by ${personName}${licence === null ? '' : `, ${licence}`}; performed ${momentText(performedAt)}, signed ${momentText(signedAt)}`;
  return (
    <p>
      {undone ? <s>{words}</s> : words}
      {undone && ` (undone: ${undoneReason})`}
      {!undone && !counts && ' (no longer counts: the step changed)'}
    </p>
  );
}

function StepLines({ step }: { readonly step: Step }) {
  const { definition } = step;
  return (
    <section className="sheet-step">
      <h3>
        {definition.number} {definition.title}
      </h3>
      {definition.cautions.map((caution) => (
        <p key={caution} className="sheet-caution">
          <strong>Caution:</strong> {caution}
        </p>
      ))}
      {definition.text !== null && <p>{definition.text}</p>}
      {definition.source !== null && (
        <p className="small">
          {definition.source.document}, revision {definition.source.revision}
        </p>
      )}
      {definition.captures.map((capture) => (
        <CaptureLines key={capture.key} step={step} capture={capture} />
      ))}
      {step.signatures.map((signature) => (
        <SignatureLine key={signature.id} signature={signature} />
      ))}
      {countingOf(step, 'done') === null && <SignatureBlank what="Done" />}
      {definition.inspection === 'independent' && countingOf(step, 'inspection') === null && (
        <SignatureBlank what="Inspected by another person" />
      )}
    </section>
  );
}

function GroupSheet({
  work,
  group,
  madeAt,
}: {
  readonly work: Work;
  readonly group: Group;
  readonly madeAt: number;
}) {
  const { signed, total } = signedOf([group]);
  const { number, airframe, component } = work.package;
  const subject = `${number} ${airframe?.registration ?? component?.serialNumber ?? ''}`;
  return (
    <div className="group-sheet">
      <PrintSheet
        title={`${group.letter} ${group.title}`}
        subject={subject}
        madeAt={madeAt}
        basis={
          <p>
            {[orderWords(work), `${signed} of ${total} signed`].filter(Boolean).join('; ')}. Approved data,
            the authority and licensed staff govern.
          </p>
        }
      >
        <PodPicture place={group.place} />
        {/* A table for its head alone: it says on each further page whose sheet this is. */}
        <table className="sheet-table" role="presentation">
          <thead>
            <tr>
              <td>
                {subject}, {group.letter} {group.title}
              </td>
            </tr>
          </thead>
          <tbody>
            {group.steps.map((step) => (
              <tr key={step.id}>
                <td>
                  <StepLines step={step} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </PrintSheet>
    </div>
  );
}

/** On paper alone: one sheet for each group, with blanks for what is not signed. Made when it is printed. */
export function StepSheets({ work }: { readonly work: Work }) {
  const [madeAt, setMadeAt] = useState<number | null>(null);
  useEffect(() => {
    const show = () => flushSync(() => setMadeAt(minuteNow()));
    const hide = () => setMadeAt(null);
    window.addEventListener('beforeprint', show);
    window.addEventListener('afterprint', hide);
    return () => {
      window.removeEventListener('beforeprint', show);
      window.removeEventListener('afterprint', hide);
    };
  }, []);
  if (madeAt === null) return null;
  return (
    <div className="print-only step-sheets">
      {groupsOf(work).map((group) => (
        <GroupSheet key={group.key} {...{ work, group, madeAt }} />
      ))}
    </div>
  );
}
