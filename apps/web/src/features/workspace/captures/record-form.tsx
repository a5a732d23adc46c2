import type { Typed } from '@strutbook/domain/work/entry.js';
import { type FormEvent, type ReactNode, useState } from 'react';
import { Button } from '../../../ui/actions/button.js';
import { ErrorSummary, type FieldMessage } from '../../../ui/messages/error-summary.js';
import { summaryOf } from '../../../ui/messages/field-messages.js';
import { useEntryOff, useStepAct } from '../work/use-desk.js';
import { recordEntry } from '../work/work-queries.js';
import type { Step } from '../work/work-shapes.js';

interface RecordFormProps {
  readonly step: Step;
  readonly capture: { readonly key: string; readonly label: string };
  /** What would be recorded, or what is to be mended first. */
  readonly read: () => Typed | readonly FieldMessage[];
  readonly onRecorded: () => void;
  readonly word: string;
  readonly children: ReactNode;
  /** Field names of the server and the controls they stand for. */
  readonly ids?: Readonly<Record<string, string>>;
}

const isTyped = (read: Typed | readonly FieldMessage[]): read is Typed => !Array.isArray(read);

/** The frame of a form that records one entry, just as it was typed. */
export function RecordForm({ step, capture, read, onRecorded, word, children, ids }: RecordFormProps) {
  const off = useEntryOff();
  const [faults, setFaults] = useState<readonly FieldMessage[]>([]);
  const [attempt, setAttempt] = useState(0);
  const act = useStepAct(recordEntry, onRecorded);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (off !== null || act.isPending) return;
    const typed = read();
    setAttempt(attempt + 1);
    setFaults(isTyped(typed) ? [] : typed);
    if (isTyped(typed)) act.mutate({ stepId: step.id, capture: capture.key, typed });
    else act.reset();
  };
  return (
    <form className="stack capture-form" noValidate onSubmit={submit}>
      <ErrorSummary messages={faults.length > 0 ? faults : summaryOf(act.error, ids)} attempt={attempt} />
      {children}
      <div>
        <Button type="submit" large offBecause={off} busy={act.isPending}>
          {act.isPending ? 'Recording' : word}
        </Button>
      </div>
    </form>
  );
}
