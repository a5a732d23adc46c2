import { useOfflineSince } from '../../../server/connection.js';
import { useSession } from '../../../server/session.js';
import { Button } from '../../../ui/actions/button.js';
import { MomentField } from '../../../ui/fields/moment-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { Answered } from '../../../ui/messages/answered.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { ChoiceField } from '../captures/choice-field.js';
import type { Meaning, Step } from '../work/work-shapes.js';
import { SecretFields } from './secret-fields.js';
import { SignConflict } from './sign-conflict.js';
import { type Signing, useSigning, type Who } from './use-signing.js';
import './signing.css';

/** The words the server built, as they will be signed. */
function Words({ signing: { statement } }: { readonly signing: Signing }) {
  return (
    <Answered query={statement} doing="Reading the words to sign" lines={5}>
      {({ statement: words, digest }) => (
        <>
          <blockquote className="sign-words">{words}</blockquote>
          <p className="small quiet">
            Digest <code className="sign-digest">{digest.slice(0, 16)}</code>, checked again by the server
            when you sign.
          </p>
        </>
      )}
    </Answered>
  );
}

function WhoSigns({ signing, choices }: { readonly signing: Signing; readonly choices: boolean }) {
  const { draft, change, ids, errorOf } = signing;
  const session = useSession();
  const options: readonly { readonly value: Who; readonly label: string }[] = [
    { value: 'me', label: session?.person.fullName ?? 'You' },
    { value: 'another', label: 'Another person' },
  ];
  return (
    <>
      {choices && (
        <ChoiceField
          legend="Who signs"
          options={options}
          value={draft.who}
          onChoose={(who) => change({ who, secret: '' })}
        />
      )}
      {draft.who === 'another' && (
        <TextField
          id={ids.signInName}
          label="Their sign-in name"
          hint={`They sign on this tablet. ${session?.person.fullName ?? 'You'} stays signed in.`}
          autoCapitalize="none"
          spellCheck={false}
          value={draft.signInName}
          error={errorOf(ids.signInName)}
          onChange={({ target }) => change({ signInName: target.value })}
        />
      )}
    </>
  );
}

function SignForm({ signing, choices }: { readonly signing: Signing; readonly choices: boolean }) {
  const { draft, change, ids, errorOf, statement, busy } = signing;
  const offline = useOfflineSince() !== null;
  const ready = statement.data !== undefined && statement.fetchStatus !== 'fetching';
  return (
    <form className="stack" noValidate onSubmit={signing.submit}>
      <ErrorSummary messages={signing.messages} attempt={signing.attempt} />
      <Words signing={signing} />
      <MomentField
        id={ids.performedAt}
        label="Performed at"
        value={draft.performedAt}
        error={errorOf(ids.performedAt)}
        onTyped={(performedAt) => change({ performedAt })}
      />
      <WhoSigns {...{ signing, choices }} />
      <SecretFields
        id={ids.secret}
        whose={draft.who === 'me' ? 'Your' : 'Their'}
        method={draft.method}
        secret={draft.secret}
        error={errorOf(ids.secret)}
        onMethod={(method) => change({ method })}
        onSecret={(secret) => change({ secret })}
      />
      <div>
        <Button
          type="submit"
          kind="primary"
          large
          busy={busy || !ready}
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
  /** The person signed in may not: only another one can. */
  readonly onlyAnother: boolean;
  readonly onClose: () => void;
}

/** Repeats what will be signed, then takes the signature of the one who did it. */
export function SignSheet({ step, meaning, onlyAnother, onClose }: SignSheetProps) {
  const signing = useSigning({ step, meaning, who: onlyAnother ? 'another' : 'me', onClose });
  const what = meaning === 'done' ? 'Sign step' : 'Sign the inspection of step';
  return (
    <SheetDialog title={`${what} ${step.definition.number}`} open shape="sheet" onClose={onClose}>
      {signing.conflict === null ? (
        <SignForm signing={signing} choices={!onlyAnother} />
      ) : (
        <SignConflict error={signing.conflict} onAgain={signing.again} onClose={onClose} />
      )}
    </SheetDialog>
  );
}
