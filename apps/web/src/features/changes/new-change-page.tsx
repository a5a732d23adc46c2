import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useQuery } from '@tanstack/react-query';
import { useSearch } from '@tanstack/react-router';
import { type FormEvent, useEffect, useRef } from 'react';
import { holderWords, useMay } from '../../server/authority.js';
import { useOfflineSince } from '../../server/connection.js';
import { airframesQuery, positionsQuery } from '../../server/fleet.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { fieldMessage, summaryOf } from '../../ui/messages/field-messages.js';
import { Notice } from '../../ui/messages/notice.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { ChangeConflict } from './change-conflict.js';
import { type ChangeDraft, EMPTY_DRAFT, FIELD_IDS, type FieldName, missingLines } from './change-draft.js';
import { ShownPreview } from './change-preview.js';
import { OffFields, OnFields } from './moves-fields.js';
import { type Seen, useChange } from './use-change.js';
import { WhenFields } from './when-fields.js';
import { chosenPosition, serialThere, WhereFields } from './where-fields.js';
import './changes.css';

const CAUTION =
  'Approved data, the authority and licensed staff govern; this record does not replace them. When a serial, a position or a part differs from the order or the data plate: stop, and ask.';

interface ConfirmProps {
  readonly change: ReturnType<typeof useChange>;
  readonly seen: Seen;
}

function Confirm({ change, seen }: ConfirmProps) {
  const offline = useOfflineSince() !== null;
  const { record, confirm, mine } = change;
  const part = useRef<HTMLElement>(null);
  // What is to be confirmed is read from its beginning.
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new preview is the trigger
  useEffect(() => part.current?.focus(), [seen]);
  const blocked = seen.preview.objections.some(({ severity }) => severity === 'blocking');
  return (
    <section className="stack change-preview" aria-labelledby="preview" ref={part} tabIndex={-1}>
      <h2 id="preview" className="section-heading">
        What will be recorded
      </h2>
      {mine !== null ? (
        <ChangeConflict
          mine={mine}
          now={seen.preview}
          onRecord={() => confirm(seen)}
          onDiscard={() => change.set({})}
        />
      ) : (
        <>
          <ShownPreview preview={seen.preview} airframeId={seen.request.airframeId} />
          <Notice kind="caution">
            <p>{CAUTION}</p>
          </Notice>
          <div>
            <Button
              kind="primary"
              busy={record.isPending}
              offBecause={offline ? OFF_WHILE_OFFLINE : null}
              onClick={() => confirm(seen)}
            >
              {record.isPending
                ? 'Recording'
                : blocked
                  ? 'Record the change with what is held against it'
                  : 'Record the change'}
            </Button>
          </div>
        </>
      )}
    </section>
  );
}

function ChangeForm({ start }: { readonly start: ChangeDraft }) {
  const change = useChange(start);
  const offline = useOfflineSince() !== null;
  const { set, missing, attempt, seen, mine, preview, record } = change;
  const positions = useQuery(positionsQuery(change.draft.airframeId)).data;
  const position = chosenPosition(positions, change.draft);
  const there = serialThere(position, change.draft.slot);
  const draft = { ...change.draft, comesOff: change.draft.comesOff ?? (position === null || there !== null) };
  const error =
    record.error instanceof ProblemError && record.error.code === 'CHECK_CHANGED'
      ? preview.error
      : (record.error ?? preview.error);
  const said = (field: FieldName): string | null => missing[field] ?? fieldMessage(error, field);
  const lines = Object.keys(missing).length > 0 ? missingLines(missing) : summaryOf(error, FIELD_IDS);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!offline && !preview.isPending) change.look(draft);
  };
  return (
    <>
      <form className="stack" noValidate onSubmit={submit}>
        <ErrorSummary
          messages={lines}
          attempt={attempt + (preview.isError ? 1 : 0) + (record.isError ? 1 : 0)}
        />
        <div className="change-form">
          <WhereFields {...{ draft, set, said, positions }} />
          <WhenFields {...{ draft, set, said }} />
          <OffFields {...{ draft, set, said, there }} />
          <OnFields {...{ draft, set, said }} />
        </div>
        <TextAreaField
          id={FIELD_IDS.reason}
          label="Why"
          hint="As the work order or the log has it"
          value={draft.reason}
          maxLength={200}
          onChange={({ target }) => set({ reason: target.value })}
          error={said('reason')}
        />
        <div>
          <Button
            type="submit"
            kind={seen === null ? 'primary' : 'secondary'}
            busy={preview.isPending}
            offBecause={offline ? OFF_WHILE_OFFLINE : null}
          >
            {preview.isPending ? 'Checking' : seen === null ? 'Check the change' : 'Check it again'}
          </Button>
        </div>
      </form>
      {seen !== null && (mine === null || !preview.isPending) && <Confirm change={change} seen={seen} />}
    </>
  );
}

function useStart(): ChangeDraft {
  const { airframe, position, slot, off } = useSearch({ from: '/signed-in/changes/new' });
  return {
    ...EMPTY_DRAFT,
    ...(airframe === undefined ? {} : { airframeId: airframe }),
    ...(position === undefined ? {} : { positionNumber: position }),
    ...(slot === undefined ? {} : { slot }),
    ...(off === undefined ? {} : { outgoingSerial: off }),
  };
}

/** Logs an engine change or a pod swap: typed, looked at with its counters, then recorded as one act. */
export function NewChangePage() {
  const start = useStart();
  const may = useMay('log-a-change');
  const airframes = useQuery(airframesQuery);
  return (
    <>
      <PageHeading
        title="Log a past change"
        below={<p>An engine, a pod or an APU taken off or put on: recorded as one act, or not at all</p>}
        actions={<ActionLink href="/work">Back to Work</ActionLink>}
      />
      {may ? (
        <Answered query={airframes} doing="Reading the airframes" lines={6}>
          {(rows) =>
            rows.length === 0 ? (
              <EmptyState action={<ActionLink href="/register">Open the register</ActionLink>}>
                No airframe is recorded. Enter the airframe and its engines in the register first.
              </EmptyState>
            ) : (
              <ChangeForm start={start} />
            )
          }
        </Answered>
      ) : (
        <section className="panel">
          <h2>You may not log a change</h2>
          <p>It needs the authority of: {holderWords('log-a-change')}.</p>
        </section>
      )}
    </>
  );
}
