import type { Capture } from '@strutbook/domain/work/capture.js';
import { reasonText } from '@strutbook/domain/work/entry-words.js';
import { useState } from 'react';
import { momentText } from '../../../format/when.js';
import { Button } from '../../../ui/actions/button.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { entriesOf } from '../captures/capture-entries.js';
import { useEntryOff } from '../work/use-desk.js';
import type { Entry, Step } from '../work/work-shapes.js';
import { typedWords } from './typed-words.js';
import { VoidDialog } from './void-dialog.js';

interface AttemptProps {
  readonly capture: Capture;
  readonly entry: Entry;
  readonly onStrike: (() => void) | null;
}

function Attempt({ capture, entry, onStrike }: AttemptProps) {
  const { typed, judgement, tool, personName, enteredAt, voided, voidReason, photoId } = entry;
  const words = typedWords(capture, typed, judgement);
  return (
    <li className="attempt">
      <StatusMark
        status={voided ? 'closed' : judgement.verdict === 'accepted' ? 'signed' : 'rejected'}
        word={voided ? 'Struck out' : judgement.verdict === 'accepted' ? 'Accepted' : 'Rejected'}
      />
      <div className="attempt-words">
        <p className="attempt-typed">{voided ? <s>{words}</s> : words}</p>
        {photoId !== null && (
          <a href={`/api/step-photos/${photoId}`} target="_blank" rel="noreferrer">
            <img
              className="attempt-photo"
              src={`/api/step-photos/${photoId}`}
              alt={capture.label}
              loading="lazy"
            />
          </a>
        )}
        {!voided &&
          judgement.reasons.map((reason) => (
            <p key={reason.code} className="attempt-reason">
              {reasonText(reason)}
            </p>
          ))}
        <p className="attempt-by">
          {personName}, {momentText(enteredAt)}
          {tool !== null && `, tool ${tool}`}
        </p>
        {voided && <p className="attempt-by">Struck out: {voidReason}</p>}
      </div>
      {onStrike !== null && (
        <Button kind="quiet" onClick={onStrike}>
          Strike out
        </Button>
      )}
    </li>
  );
}

/** The last attempt, for those who hear the page. */
function heard(entries: readonly Entry[], capture: Capture): string {
  const last = entries.at(-1);
  if (last === undefined) return '';
  const words = last.voided ? 'struck out' : last.judgement.verdict;
  return `${capture.label}, attempt ${entries.length}: ${typedWords(capture, last.typed, last.judgement)}, ${words}`;
}

/** Every attempt, the last one last: as typed, its verdict, who and when. Nothing is left out. */
export function AttemptList({ step, capture }: { readonly step: Step; readonly capture: Capture }) {
  const [striking, setStriking] = useState<Entry | null>(null);
  const off = useEntryOff();
  const entries = entriesOf(step, capture);
  return (
    <>
      {/* Heard, not shown over the page: what it says stands in the list. */}
      <p className="visually-hidden" role="status">
        {heard(entries, capture)}
      </p>
      <ol className="plain-list attempts">
        {entries.map((entry) => (
          <Attempt
            key={entry.id}
            capture={capture}
            entry={entry}
            onStrike={entry.voided || off !== null ? null : () => setStriking(entry)}
          />
        ))}
      </ol>
      {striking !== null && (
        <VoidDialog
          step={step}
          entry={striking}
          words={typedWords(capture, striking.typed, striking.judgement)}
          onClose={() => setStriking(null)}
        />
      )}
    </>
  );
}
