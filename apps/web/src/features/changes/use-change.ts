import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useMutation } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useAct } from '../../server/act.js';
import type { ChangePreview, ChangeRequest } from '../../server/wire.js';
import { tellBroken } from '../../ui/consequences/broken-note.js';
import { announce } from '../../ui/messages/announcements.js';
import { type ChangeDraft, type FieldName, readDraft } from './change-draft.js';
import { previewChange, recordChange } from './changes-queries.js';

/** A preview and what it is of. */
export interface Seen {
  readonly request: ChangeRequest;
  readonly preview: ChangePreview;
}

/** Draft, preview and record: what is previewed is what is recorded, or nothing is. */
export function useChange(start: ChangeDraft) {
  const navigate = useNavigate();
  const [draft, setDraft] = useState(start);
  const [missing, setMissing] = useState<Partial<Record<FieldName, string>>>({});
  const [attempt, setAttempt] = useState(0);
  const [seen, setSeen] = useState<Seen | null>(null);
  const [mine, setMine] = useState<ChangePreview | null>(null);
  const preview = useMutation({
    mutationFn: previewChange,
    onSuccess: (shown, request) => setSeen({ request, preview: shown }),
  });
  const record = useAct({
    perform: recordChange,
    refresh: [[]],
    onDone: ({ id, number, consequences }) => {
      tellBroken(`${number}: the change was recorded`, consequences);
      announce(`Recorded as ${number}.`);
      void navigate({ to: '/packages/$packageId', params: { packageId: id } });
    },
  });
  const set = (change: Partial<ChangeDraft>) => {
    setDraft((before) => ({ ...before, ...change }));
    // What was previewed is no longer what stands in the form.
    setSeen(null);
    setMine(null);
    record.reset();
  };
  const look = (told: ChangeDraft) => {
    const read = readDraft(told);
    setAttempt((before) => before + 1);
    setMissing(read.ok ? {} : read.missing);
    setSeen(null);
    record.reset();
    if (read.ok) preview.mutate(read.request);
    else preview.reset();
  };
  const confirm = ({ request, preview: shown }: Seen) => {
    setMine(null);
    setAttempt((before) => before + 1);
    record.mutate(
      { request, digest: shown.digest },
      {
        onError: (error) => {
          if (!(error instanceof ProblemError) || error.code !== 'CHECK_CHANGED') return;
          setMine(shown);
          preview.mutate(request);
        },
      },
    );
  };
  return { draft, set, missing, attempt, seen, mine, preview, record, look, confirm };
}
