import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useMutation, useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { counted } from '../../../format/counts.js';
import { parseDate } from '../../../format/utc-moment.js';
import { useAct } from '../../../server/act.js';
import { useMay } from '../../../server/authority.js';
import { useOfflineSince } from '../../../server/connection.js';
import { type EngineModel, engineModelsQuery } from '../../../server/fleet.js';
import { ActionLink } from '../../../ui/actions/action-link.js';
import { Button } from '../../../ui/actions/button.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { ErrorSummary, type FieldMessage } from '../../../ui/messages/error-summary.js';
import { fieldMessages } from '../../../ui/messages/field-messages.js';
import { Notice } from '../../../ui/messages/notice.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { ProblemPanel } from '../../../ui/messages/problem-panel.js';
import { WordsField } from '../form-parts.js';
import { missing } from '../plain-checks.js';
import { RegisterFrame } from '../register-frame.js';
import { BASES } from './life-limit-form.js';
import { PASTED_COLUMNS, readPasted } from './limit-paste.js';
import { acceptLimits, type LimitPreview, type LimitRevision, previewLimits } from './revision-acts.js';
import { RevisionChanges } from './revision-changes.js';
import './revision.css';

interface Typed {
  readonly basis: LimitRevision['basis'];
  readonly document: string;
  readonly revision: string;
  readonly effectiveOn: string;
  readonly table: string;
}

const START: Typed = { basis: 'manual', document: '', revision: '', effectiveOn: '', table: '' };

function faultsOf(typed: Typed, models: readonly EngineModel[]): Faults {
  const date = parseDate(typed.effectiveOn);
  const { rows, faults } = readPasted(typed.table, models);
  const [first] = faults;
  const more = faults.length > 1 ? ` (${faults.length - 1} more)` : '';
  const table =
    first !== undefined
      ? `Line ${first.line}: ${first.message}${more}`
      : rows.length === 0
        ? 'Enter at least one row.'
        : null;
  return {
    ...missing(typed, {
      document: 'Enter the document, a directive with its number',
      revision: 'Enter its revision',
    }),
    ...(date.ok ? {} : { effectiveOn: date.reason }),
    ...(table === null ? {} : { table }),
  };
}

function wordsOf(typed: Typed, models: readonly EngineModel[]): LimitRevision {
  return {
    basis: typed.basis,
    document: typed.document.trim(),
    revision: typed.revision.trim(),
    effectiveOn: typed.effectiveOn.trim(),
    rows: [...readPasted(typed.table, models).rows],
  };
}

/** The server's refusal; of a row by the line it stands on. */
function refusedRows(error: unknown, lines: readonly number[], tableId: string): FieldMessage[] {
  return fieldMessages(error).map(({ path, message }) => {
    const row = /^rows\.(\d+)\./.exec(path ?? '')?.[1];
    return row === undefined
      ? { fieldId: null, message }
      : { fieldId: tableId, message: `Line ${lines[Number(row)] ?? Number(row) + 1}: ${message}` };
  });
}

interface Seen {
  readonly words: LimitRevision;
  readonly preview: LimitPreview;
}

function useRevision(models: readonly EngineModel[]) {
  const navigate = useNavigate();
  const [seen, setSeen] = useState<Seen | null>(null);
  const [moved, setMoved] = useState(false);
  const look = useMutation({
    mutationFn: previewLimits,
    onSuccess: (preview, words) => setSeen({ words, preview }),
  });
  const accept = useAct({
    perform: acceptLimits,
    refresh: [[]],
    onDone: ({ limits }) => {
      announce(`${counted(limits.length, 'limit')} accepted. Lives were computed again.`);
      void navigate({ to: '/register/life-limits', search: { find: limits[0]?.document ?? '' } });
    },
  });
  const form = useActForm({
    start: START,
    check: (typed) => faultsOf(typed, models),
    words: (typed) => wordsOf(typed, models),
    act: look,
  });
  // What was seen is no longer what stands in the form.
  const change = (next: Partial<Typed>) => {
    form.change(next);
    setSeen(null);
    setMoved(false);
    look.reset();
    accept.reset();
  };
  const confirm = ({ words, preview }: Seen) => {
    setMoved(false);
    accept.mutate(
      { ...words, digest: preview.digest },
      {
        onError: (error) => {
          if (!(error instanceof ProblemError) || error.code !== 'CHECK_CHANGED') return;
          setMoved(true);
          look.mutate(words);
        },
      },
    );
  };
  return { form: { ...form, change }, look, accept, seen, moved, confirm };
}

/** The rows of a revision, what they change, and one act to accept them. */
function RevisionForm({ models }: { readonly models: readonly EngineModel[] }) {
  const offline = useOfflineSince() !== null;
  const { form, look, accept, seen, moved, confirm } = useRevision(models);
  const { typed, change, field } = form;
  const table = field('table');
  const { rows, lines } = readPasted(typed.table, models);
  const refused = look.error === null ? [] : refusedRows(look.error, lines, table.id);
  const failed = accept.error !== null && !moved ? accept.error : null;
  return (
    <>
      <form className="stack revision-form" noValidate onSubmit={form.submit}>
        <ErrorSummary messages={refused.length > 0 ? refused : form.messages} attempt={form.attempt} />
        <div className="revision-fields">
          <SelectField
            {...field('basis')}
            label="Kind of document"
            options={BASES}
            value={typed.basis}
            onChange={(event) =>
              change({ basis: event.target.value === 'directive' ? 'directive' : 'manual' })
            }
          />
          <WordsField form={form} name="document" label="Document" hint="A directive with its number" />
          <WordsField form={form} name="revision" label="Revision" mono />
          <WordsField form={form} name="effectiveOn" label="Effective on" hint="Year-month-day" mono />
        </div>
        <TextAreaField
          {...table}
          label="Rows, one a line, as pasted from a table"
          hint={`${PASTED_COLUMNS}. N/L is not limited, N/A not authorised; a calendar life is “10 years from new”.`}
          rows={8}
          spellCheck={false}
          value={typed.table}
          onChange={(event) => change({ table: event.target.value })}
        />
        <p role="status">{counted(rows.length, 'row')} read</p>
        <div>
          <Button
            type="submit"
            kind={seen === null ? 'primary' : 'secondary'}
            busy={form.busy}
            offBecause={offline ? OFF_WHILE_OFFLINE : null}
          >
            {form.busy ? 'Looking' : 'Show what it changes'}
          </Button>
        </div>
      </form>
      {moved && (
        <Notice kind="caution">
          The records changed since you looked, and nothing was stored. Shown is what the revision changes
          now: look again before you accept it.
        </Notice>
      )}
      {failed !== null && <ProblemPanel error={failed} doing="Accepting the revision" />}
      {seen !== null && (
        <>
          <RevisionChanges preview={seen.preview} />
          <div>
            <Button
              kind="primary"
              busy={accept.isPending || look.isPending}
              offBecause={offline ? OFF_WHILE_OFFLINE : null}
              onClick={() => confirm(seen)}
            >
              {typed.basis === 'directive' ? 'Accept the directive' : 'Accept the revision'}
            </Button>
          </div>
        </>
      )}
    </>
  );
}

/** A new revision of a manual, or a directive. */
export function RevisionPage() {
  const models = useQuery(engineModelsQuery);
  const may = useMay('keep-records');
  return (
    <RegisterFrame
      title="Revision of limits, or a directive"
      below={
        <p>
          Nothing is stored until it is accepted. A directive lowers what a manual states: the lower of both
          governs, and a limit is never varied.
        </p>
      }
    >
      <Answered query={models} doing="Reading the engine models">
        {(found) => {
          if (found.length === 0)
            return (
              <EmptyState
                action={<ActionLink href="/register/engine-models">Go to Engine models</ActionLink>}
              >
                A limit belongs to an engine model: enter an engine model first.
              </EmptyState>
            );
          return may ? <RevisionForm models={found} /> : null;
        }}
      </Answered>
    </RegisterFrame>
  );
}
