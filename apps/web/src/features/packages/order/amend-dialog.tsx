import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { SecretField } from '../../../ui/fields/secret-field.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { OrderFields } from './order-fields.js';
import { type Amending, useAmending } from './use-amending.js';

/** The second person, on the same device. */
function Confirmation({ amending }: { readonly amending: ReturnType<typeof useAmending> }) {
  const { ids, said, signInName, setSignInName, secret, setSecret } = amending;
  return (
    <fieldset className="package-part">
      <legend>Confirmed by a second person</legend>
      <p className="quiet">They look at the order and confirm it here. You stay signed in.</p>
      <TextField
        id={ids['confirmation.signInName']}
        label="Their sign-in name"
        mono
        spellCheck={false}
        autoCapitalize="none"
        value={signInName}
        onChange={({ target }) => setSignInName(target.value)}
        error={said('confirmation.signInName')}
      />
      <SecretField
        id={ids['confirmation.secret'] ?? ''}
        whose="Their"
        value={secret}
        onChange={setSecret}
        error={said('confirmation.secret')}
      />
    </fieldset>
  );
}

/** Amends the order of an open package: a second person confirms it on the same tablet. */
export function AmendDialog(props: Amending) {
  const { work, onClose } = props;
  const offline = useOfflineSince() !== null;
  const amending = useAmending(props);
  const { act, ids, said, draft, setDraft, reason, setReason } = amending;
  return (
    <SheetDialog
      shape="sheet"
      title={`Amend the order of ${work.number}`}
      open
      onClose={onClose}
      actions={
        <>
          <Button
            kind="primary"
            busy={act.isPending}
            offBecause={offline ? OFF_WHILE_OFFLINE : null}
            onClick={amending.send}
          >
            {act.isPending ? 'Amending' : 'Amend the order'}
          </Button>
          <Button onClick={onClose}>Leave it as it is</Button>
        </>
      }
    >
      <ErrorSummary messages={amending.messages} attempt={amending.attempt + (act.isError ? 1 : 0)} />
      <p>
        The order before it stays on record. What was read from plates and papers of a side that changes is
        struck out and read anew. What was taken off or put on already is not amended.
      </p>
      <OrderFields
        placeFixed
        draft={draft}
        set={(change) => setDraft((before) => ({ ...before, ...change }))}
        on={amending.on}
        said={said}
      />
      <TextAreaField
        id={ids['reason']}
        label="Why the order is amended"
        maxLength={200}
        value={reason}
        onChange={({ target }) => setReason(target.value)}
        error={said('reason')}
      />
      <Confirmation amending={amending} />
    </SheetDialog>
  );
}
