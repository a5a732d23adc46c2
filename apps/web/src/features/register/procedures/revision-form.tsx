import { dataOrThrow } from '@strutbook/api-client/index.js';
import { ProblemError } from '@strutbook/api-client/problem-error.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { type FormEvent, useState } from 'react';
import { counted } from '../../../format/counts.js';
import { type ActHeaders, useAct } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import { useOfflineSince } from '../../../server/connection.js';
import { PROCEDURES_KEY, type Procedure } from '../../../server/procedures.js';
import { Button } from '../../../ui/actions/button.js';
import { FieldFrame } from '../../../ui/fields/field-frame.js';
import { ErrorSummary, type FieldMessage } from '../../../ui/messages/error-summary.js';
import { summaryOf } from '../../../ui/messages/field-messages.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { placeText, type RevisionFile, readRevision } from './revision-file.js';

const FILE_ID = 'revision-file';
const MOST_BYTES = 1_048_576;

type NewProcedure = components['schemas']['NewProcedureDto'];

/** Sends the file as it is: the server is the judge of it. Throws: ProblemError. */
async function record(body: RevisionFile['body'], headers: ActHeaders): Promise<Procedure> {
  return dataOrThrow(await api.POST('/api/procedures', { body: body as unknown as NewProcedure, headers }));
}

/** Each fault with its place in the file. */
function faultsOf(error: unknown): readonly FieldMessage[] {
  const told = summaryOf(error);
  if (!(error instanceof ProblemError)) return told;
  return told.map(({ message }, place) => {
    const field = error.fields[place]?.field;
    return { fieldId: FILE_ID, message: field === undefined ? message : `${placeText(field)}: ${message}` };
  });
}

async function readFile(file: File | null): Promise<ReturnType<typeof readRevision>> {
  if (file === null) return { ok: false, reason: 'Choose a file' };
  if (file.size > MOST_BYTES) return { ok: false, reason: 'The file is larger than 1 MiB. Choose another' };
  return readRevision(await file.text());
}

function Chosen({ file }: { readonly file: RevisionFile }) {
  return (
    <p>
      The file holds <strong className="serial">{file.code || 'no code'}</strong>, revision{' '}
      <strong>{file.revision || 'none'}</strong>: {file.title || 'no title'}, {counted(file.steps, 'step')}.
    </p>
  );
}

/** A new revision of a procedure from its file. All of it is checked before anything is recorded. */
export function RevisionForm({ onRecorded }: { readonly onRecorded: (procedure: Procedure) => void }) {
  const offline = useOfflineSince() !== null;
  const [file, setFile] = useState<RevisionFile | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [attempt, setAttempt] = useState(0);
  const act = useAct({ perform: record, onDone: onRecorded, refresh: [PROCEDURES_KEY] });
  const choose = async (chosen: File | null) => {
    const read = await readFile(chosen);
    act.reset();
    setFile(read.ok ? read.file : null);
    setFault(read.ok || chosen === null ? null : read.reason);
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setAttempt(attempt + 1);
    if (file === null) setFault(fault ?? 'Choose a file');
    else if (!act.isPending && !offline) act.mutate(file.body);
  };
  const messages = fault === null ? faultsOf(act.error) : [{ fieldId: FILE_ID, message: fault }];
  return (
    <form className="stack" noValidate onSubmit={submit}>
      <ErrorSummary
        title={messages.length > 1 ? `${messages.length} faults in the file` : 'There is a problem'}
        messages={messages}
        attempt={attempt * 2 + (act.error === null ? 0 : 1)}
      />
      <FieldFrame
        id={FILE_ID}
        label="File"
        hint="JSON with code, revision, title, kind, document, documentRevision, content, and airframeType or engineModel it is for; at most 1 MiB"
        error={fault}
      >
        {(wiring) => (
          <input
            {...wiring}
            type="file"
            accept=".json,application/json"
            className="field-input field-file"
            onChange={({ target }) => void choose(target.files?.[0] ?? null)}
          />
        )}
      </FieldFrame>
      {file !== null && <Chosen file={file} />}
      <p className="field-hint">
        A revision is never changed once it is recorded. Packages that are open keep the steps they were
        opened with.
      </p>
      <div>
        <Button
          type="submit"
          kind="primary"
          busy={act.isPending}
          offBecause={offline ? OFF_WHILE_OFFLINE : null}
        >
          {act.isPending ? 'Checking the file' : 'Check and record'}
        </Button>
      </div>
    </form>
  );
}
