import { useState } from 'react';
import { momentText } from '../../../format/when.js';
import { useMay } from '../../../server/authority.js';
import { useSession } from '../../../server/session.js';
import { Button } from '../../../ui/actions/button.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import type { Status } from '../../../ui/status/statuses.js';
import { isFrozen, useDesk } from '../work/use-desk.js';
import type { Signature, Step } from '../work/work-shapes.js';
import { UndoDialog } from './undo-dialog.js';

const MEANINGS = { done: 'Work done', inspection: 'Inspected' } as const;

function markOf({ undone, counts }: Signature): readonly [Status, string] {
  if (undone) return ['closed', 'Undone'];
  return counts ? ['signed', 'Signed'] : ['changed', 'No longer counts'];
}

function Line({
  signature,
  onUndo,
}: {
  readonly signature: Signature;
  readonly onUndo: (() => void) | null;
}) {
  const { meaning, personName, licence, performedAt, signedAt, undone, undoneReason, counts } = signature;
  const [status, word] = markOf(signature);
  const who = `${MEANINGS[meaning]}: ${personName}${licence === null ? '' : `, ${licence}`}`;
  return (
    <li className="attempt">
      <StatusMark status={status} word={word} />
      <div className="attempt-words">
        <p>{undone ? <s>{who}</s> : <strong>{who}</strong>}</p>
        <p className="attempt-by">
          Performed {momentText(performedAt)}, signed {momentText(signedAt)}
        </p>
        {signature.reinspectionReason !== null && (
          <p className="attempt-by">Re-inspected by the same person: {signature.reinspectionReason}</p>
        )}
        {undone && <p className="attempt-by">Undone: {undoneReason}</p>}
        {!undone && !counts && <p className="attempt-by">The step changed after this signature.</p>}
      </div>
      {onUndo !== null && (
        <Button kind="quiet" onClick={onUndo}>
          Undo
        </Button>
      )}
    </li>
  );
}

/** Every signature of a step, undone and overtaken ones too. None is ever edited. */
export function SignatureList({ step }: { readonly step: Step }) {
  const { work } = useDesk();
  const session = useSession();
  const [undoing, setUndoing] = useState<Signature | null>(null);
  const certifies = useMay('release');
  if (step.signatures.length === 0) return null;
  const mayUndo = ({ personId, undone }: Signature) =>
    !undone && !isFrozen(work) && (certifies || personId === session?.person.id);
  return (
    <section aria-label="Signatures">
      <h4 className="capture-head">Signatures</h4>
      <ol className="plain-list attempts">
        {step.signatures.map((signature) => (
          <Line
            key={signature.id}
            signature={signature}
            onUndo={mayUndo(signature) ? () => setUndoing(signature) : null}
          />
        ))}
      </ol>
      {undoing !== null && <UndoDialog signature={undoing} onClose={() => setUndoing(null)} />}
    </section>
  );
}
