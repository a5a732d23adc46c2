import { type FormEvent, useState } from 'react';
import { useAct } from '../../server/act.js';
import { Button } from '../../ui/actions/button.js';
import { FieldFrame } from '../../ui/fields/field-frame.js';
import { ErrorSummary, type FieldMessage } from '../../ui/messages/error-summary.js';
import { summaryOf } from '../../ui/messages/field-messages.js';
import { type ChosenFile, IMPORTS_KEY, takeFile } from './imports-data.js';

interface ChooseFileProps {
  readonly offBecause: string | null;
  readonly onTaken: (id: string) => void;
}

const FILE_ID = 'import-file';
const MOST_BYTES = 32 * 1_048_576;

const HEADINGS =
  'registration,log_page,from,to,take_off_utc,landing_utc,touch_and_goes,starts,aborted_take_offs';

function faultOf(file: File | null): string | null {
  if (file === null) return 'Choose a file';
  if (file.size === 0) return 'The file is empty. Choose another';
  return file.size > MOST_BYTES ? 'The file is larger than 32 MiB. Split it, then choose a part' : null;
}

/** Choosing a file of flights and having it checked. Nothing is recorded by that. */
export function ChooseFile({ offBecause, onTaken }: ChooseFileProps) {
  const [file, setFile] = useState<File | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [attempt, setAttempt] = useState(0);
  const taking = useAct<ChosenFile, { readonly id: string }>({
    perform: takeFile,
    refresh: [IMPORTS_KEY],
    onDone: ({ id }) => onTaken(id),
  });
  const messages: readonly FieldMessage[] =
    fault === null
      ? summaryOf(taking.error, { content: FILE_ID, fileName: FILE_ID })
      : [{ fieldId: FILE_ID, message: fault }];
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const found = faultOf(file);
    setFault(found);
    setAttempt(attempt + 1);
    if (found === null && file !== null && !taking.isPending && offBecause === null)
      taking.mutate({ file, name: file.name, size: file.size, modified: file.lastModified });
  };
  return (
    <form className="sheet stack" noValidate onSubmit={submit}>
      <h2>Check a file of flights</h2>
      <ErrorSummary messages={messages} attempt={attempt * 2 + (taking.error === null ? 0 : 1)} />
      <FieldFrame
        id={FILE_ID}
        label="File"
        hint="Comma-separated text (.csv), at most 32 MiB. The check records nothing."
        error={fault ?? messages.find(({ fieldId }) => fieldId === FILE_ID)?.message ?? null}
      >
        {(wiring) => (
          <input
            {...wiring}
            type="file"
            accept=".csv,text/csv,text/plain"
            className="field-input field-file"
            onChange={(event) => setFile(event.target.files?.[0] ?? null)}
          />
        )}
      </FieldFrame>
      <details>
        <summary>Column headings and formats</summary>
        <p>The first line holds these headings, in any order:</p>
        <p>
          <code className="import-headings">{HEADINGS}</code>
        </p>
        <p>
          Instants are UTC: <code>2026-11-11 14:20</code>. Counts are whole numbers. A position that did not
          run is entered on the page Flights.
        </p>
      </details>
      <div>
        <Button type="submit" kind="primary" busy={taking.isPending} offBecause={offBecause}>
          {taking.isPending ? 'Sending the file' : 'Check the file'}
        </Button>
      </div>
    </form>
  );
}
