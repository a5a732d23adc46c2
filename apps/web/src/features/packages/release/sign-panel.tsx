import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useNavigate, useParams } from '@tanstack/react-router';
import { type FormEvent, useId, useState } from 'react';
import { counted } from '../../../format/counts.js';
import { useAct } from '../../../server/act.js';
import { holderWords, useMay } from '../../../server/authority.js';
import { useOfflineSince } from '../../../server/connection.js';
import { useReadOnly } from '../../../server/session.js';
import type { Objection, ReleaseCheck } from '../../../server/wire.js';
import { Button } from '../../../ui/actions/button.js';
import { NO_SECRET, SecretField } from '../../../ui/fields/secret-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { fieldMessage, summaryOf } from '../../../ui/messages/field-messages.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { signRelease } from './release-queries.js';

interface SignPanelProps {
  readonly check: ReleaseCheck;
  readonly blocking: readonly Objection[];
  /** Asks for the check anew. */
  readonly onAgain: () => void;
}

/** Why the release cannot be signed now; null when it can. */
function offBecause(blocking: readonly Objection[], offline: boolean, may: boolean): string | null {
  if (!may) return `Releasing needs the authority of: ${holderWords('release')}. You do not hold it.`;
  if (blocking.length > 0) {
    const what = blocking.slice(0, 3).map(({ subject }) => subject.label.replace(/\.$/, ''));
    const more = blocking.length > 3 ? `, and ${counted(blocking.length - 3, 'more', 'more')}` : '';
    return `Off while ${counted(blocking.length, 'point')} ${blocking.length === 1 ? 'is' : 'are'} open: ${what.join('; ')}${more}`;
  }
  return offline ? OFF_WHILE_OFFLINE : null;
}

const CHANGED: ReadonlySet<string> = new Set([
  'CHECK_CHANGED',
  'STALE',
  'RELEASE_BLOCKED',
  'ALREADY_RELEASED',
]);

/** The server's names of what is asked. */
const SECRET_FIELDS = ['secret', 'password', 'pin'] as const;

function Changed({ error, onAgain }: { readonly error: Error; readonly onAgain: () => void }) {
  return (
    <section className="conflict stack" role="alert">
      <h2>The records changed after this check</h2>
      <p>{error.message} Nothing was signed. Look at the check anew before you sign.</p>
      <div>
        <Button onClick={onAgain}>Check again</Button>
      </div>
    </section>
  );
}

/** The signature: the signer's password again, on exactly what the check shows. */
export function SignPanel({ check, blocking, onAgain }: SignPanelProps) {
  const { packageId } = useParams({ from: '/signed-in/packages/$packageId/release-check' });
  const id = useId();
  const navigate = useNavigate();
  const may = useMay('release');
  const readOnly = useReadOnly();
  const offline = useOfflineSince() !== null;
  const [secret, setSecret] = useState(NO_SECRET);
  const [missing, setMissing] = useState<string | null>(null);
  const [attempt, setAttempt] = useState(0);
  const signing = useAct({
    perform: signRelease,
    refresh: [[]],
    onDone: ({ number }) => {
      announce(`Released under ${number}.`);
      void navigate({ to: '/packages/$packageId', params: { packageId } });
    },
  });
  const off = offBecause(blocking, offline, may);
  if (readOnly)
    return <p className="quiet">You read only. {holderWords('release')} can release this package.</p>;
  const error = signing.error;
  if (error instanceof ProblemError && CHANGED.has(error.code))
    return <Changed error={error} onAgain={onAgain} />;
  const sign = (event: FormEvent) => {
    event.preventDefault();
    if (off !== null || signing.isPending) return;
    setAttempt(attempt + 1);
    const nothing =
      secret.secret === '' ? `Enter your ${secret.method === 'pin' ? 'PIN' : 'password'}, to sign` : null;
    setMissing(nothing);
    if (nothing === null)
      signing.mutate({ packageId, version: check.version, digest: check.digest, ...secret });
  };
  const field = `${id}-secret`;
  const said =
    missing ?? SECRET_FIELDS.map((name) => fieldMessage(error, name)).find((told) => told !== null);
  const messages =
    missing !== null
      ? [{ fieldId: field, message: missing }]
      : summaryOf(error, Object.fromEntries(SECRET_FIELDS.map((name) => [name, field])));
  return (
    <form className="stack sign" noValidate onSubmit={sign} aria-label="Signing">
      <ErrorSummary messages={messages} attempt={attempt} />
      {off === null && (
        <SecretField
          id={field}
          whose="Your"
          hint="You sign the statement above, on the check as it stands."
          value={secret}
          onChange={setSecret}
          error={said}
        />
      )}
      <div>
        <Button type="submit" kind="primary" offBecause={off} busy={signing.isPending}>
          {signing.isPending ? 'Signing' : 'Release to service'}
        </Button>
      </div>
    </form>
  );
}
