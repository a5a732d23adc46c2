import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { MomentField } from '../../../ui/fields/moment-field.js';
import { SecretField } from '../../../ui/fields/secret-field.js';
import { Answered } from '../../../ui/messages/answered.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { FiguresFields } from '../../../ui/reading/figures-fields.js';
import type { Meaning, Step } from '../work/work-shapes.js';
import { SignConflict } from './sign-conflict.js';
import type { Who } from './sign-draft.js';
import { type Signing, useSigning } from './use-signing.js';
import { WhoSigns } from './who-signs.js';
import './signing.css';

const WAITS = {
  name: 'The words to sign stand here once it is known who signs.',
  reason: 'The words to sign stand here once the reason is entered.',
} as const;

const hasFields = (error: unknown): boolean => error instanceof ProblemError && error.fields.length > 0;

/** The words the server built, as they will be signed. */
function Words({ signing: { words } }: { readonly signing: Signing }) {
  const { statement, performedAt, waitsFor } = words;
  if (waitsFor !== null) return <p className="sign-words quiet">{WAITS[waitsFor]}</p>;
  if (performedAt === null)
    return <p className="sign-words quiet">The words to sign stand here once the moment can be read.</p>;
  if (statement.data === undefined && hasFields(statement.error))
    return <p className="sign-words quiet">The words to sign stand here once what is marked is mended.</p>;
  return (
    <Answered query={statement} doing="Reading the words to sign" lines={5}>
      {({ statement: told, digest }) => (
        <>
          <blockquote className="sign-words">{told}</blockquote>
          <p className="small quiet">
            Digest <code className="sign-digest">{digest.slice(0, 16)}</code>, checked again by the server
            when you sign.
          </p>
        </>
      )}
    </Answered>
  );
}

function SignForm({ signing, choices }: { readonly signing: Signing; readonly choices: boolean }) {
  const { draft, change, ids, errorOf, words, busy } = signing;
  const offline = useOfflineSince() !== null;
  const whoFirst = draft.who !== 'me';
  const who = <WhoSigns {...{ signing, choices }} />;
  return (
    <form className="stack" noValidate onSubmit={signing.submit}>
      <ErrorSummary messages={signing.messages} attempt={signing.attempt} />
      {whoFirst && who}
      <Words signing={signing} />
      <MomentField
        id={ids.performedAt}
        label="Performed at"
        value={draft.performedAt}
        error={errorOf(ids.performedAt)}
        onTyped={(performedAt) => change({ performedAt })}
      />
      {draft.figures !== null && (
        <FiguresFields
          legend="Its counter showed"
          hint="The auxiliary power unit counts by its own counter, read as it is moved"
          value={draft.figures}
          onChange={(figures) => change({ figures })}
          field={(name) => {
            const id = ids[`counterReading.${name}`];
            return { id, error: errorOf(id) };
          }}
        />
      )}
      {!whoFirst && who}
      <SecretField
        id={ids.secret}
        whose={draft.who === 'another' ? 'Their' : 'Your'}
        value={{ method: draft.method, secret: draft.secret }}
        onChange={change}
        error={errorOf(ids.secret)}
      />
      <div>
        <Button
          type="submit"
          kind="primary"
          large
          busy={busy || words.statement.isFetching}
          offBecause={offline ? OFF_WHILE_OFFLINE : null}
        >
          {busy ? 'Signing' : 'Sign these words'}
        </Button>
      </div>
    </form>
  );
}

interface SignSheetProps {
  readonly step: Step;
  readonly meaning: Meaning;
  readonly who: Who;
  readonly onClose: () => void;
}

/** Repeats what will be signed, then takes the signature of the one who did it. */
export function SignSheet({ step, meaning, who, onClose }: SignSheetProps) {
  const signing = useSigning({ step, meaning, who, onClose });
  const what = meaning === 'done' ? 'Sign step' : 'Sign the inspection of step';
  return (
    <SheetDialog title={`${what} ${step.definition.number}`} open shape="sheet" onClose={onClose}>
      {signing.conflict === null ? (
        <SignForm signing={signing} choices={who === 'me'} />
      ) : (
        <SignConflict error={signing.conflict} onAgain={signing.again} onClose={onClose} />
      )}
    </SheetDialog>
  );
}
