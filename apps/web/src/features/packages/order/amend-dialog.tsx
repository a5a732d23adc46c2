import { useId, useState } from 'react';
import { useAct } from '../../../server/act.js';
import { useOfflineSince } from '../../../server/connection.js';
import type { Order, WorkPackage } from '../../../server/work.js';
import { Button } from '../../../ui/actions/button.js';
import { NO_SECRET, SecretField } from '../../../ui/fields/secret-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { ErrorSummary, type FieldMessage } from '../../../ui/messages/error-summary.js';
import { fieldMessage, summaryOf } from '../../../ui/messages/field-messages.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { amendOrder } from '../package-acts.js';
import { draftOf, ORDER_IDS, type OrderOn, orderFaults, orderRequest } from './order-draft.js';
import { OrderFields } from './order-fields.js';
import { useOrderPlaces } from './places-there.js';

interface AmendDialogProps {
  readonly work: WorkPackage;
  readonly order: Order;
  readonly onClose: () => void;
}

type Faults = Readonly<Record<string, string>>;

/** The server's names of the order's fields have no 'order.' before them here. */
const bare = (field: string): string => field.replace(/^order\./, '');

function useAmending({ work, order, onClose }: AmendDialogProps) {
  const id = useId();
  const on: OrderOn =
    order.positionNumber !== null && work.airframe !== null
      ? { kind: 'airframe', id: work.airframe.id }
      : { kind: 'component', id: work.component?.id ?? '' };
  const [draft, setDraft] = useState(() => draftOf(order));
  const [signInName, setSignInName] = useState('');
  const [secret, setSecret] = useState(NO_SECRET);
  const [faults, setFaults] = useState<Faults>({});
  const [attempt, setAttempt] = useState(0);
  const there = useOrderPlaces(on, draft).chosen?.there ?? null;
  const ids: Readonly<Record<string, string>> = {
    ...Object.fromEntries(Object.entries(ORDER_IDS).map(([field, control]) => [bare(field), control])),
    'confirmation.signInName': `${id}-name`,
    'confirmation.secret': `${id}-secret`,
    signInName: `${id}-name`,
    secret: `${id}-secret`,
  };
  const act = useAct({
    perform: amendOrder,
    refresh: [[]],
    onDone: () => {
      announce(`The order of ${work.number} is amended. The order before it stays on record.`);
      onClose();
    },
  });
  const send = () => {
    const found: Record<string, string> = {};
    for (const [field, words] of Object.entries(orderFaults(draft, on, there))) found[bare(field)] = words;
    if (signInName.trim() === '')
      found['confirmation.signInName'] = 'Enter the sign-in name of the person who confirms it';
    if (secret.secret === '')
      found['confirmation.secret'] =
        `The person who confirms enters their ${secret.method === 'pin' ? 'PIN' : 'password'}`;
    setFaults(found);
    setAttempt(attempt + 1);
    if (Object.keys(found).length > 0) act.reset();
    else
      act.mutate({
        packageId: work.id,
        ...orderRequest(draft, on, there),
        confirmation: { signInName: signInName.trim(), ...secret },
      });
  };
  const said = (field: string): string | null =>
    faults[field] ?? fieldMessage(act.error, field) ?? fieldMessage(act.error, `order.${field}`);
  const messages: readonly FieldMessage[] =
    Object.keys(faults).length > 0
      ? Object.entries(faults).map(([field, message]) => ({ fieldId: ids[field] ?? null, message }))
      : summaryOf(act.error, ids);
  return {
    id,
    on,
    draft,
    setDraft,
    signInName,
    setSignInName,
    secret,
    setSecret,
    attempt,
    act,
    send,
    said,
    messages,
  };
}

/** Amends the order of an open package: a second person confirms it on the same tablet. */
export function AmendDialog(props: AmendDialogProps) {
  const { work, onClose } = props;
  const offline = useOfflineSince() !== null;
  const amending = useAmending(props);
  const { id, act, said } = amending;
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
            Amend the order
          </Button>
          <Button onClick={onClose}>Leave it as it is</Button>
        </>
      }
    >
      <ErrorSummary messages={amending.messages} attempt={amending.attempt + (act.isError ? 1 : 0)} />
      <p>
        The order before it stays on record. Entries already made are judged against the new order when they
        are made again; what was signed on a serial that no longer fits stops counting.
      </p>
      <OrderFields
        placeFixed
        draft={amending.draft}
        set={(change) => amending.setDraft((before) => ({ ...before, ...change }))}
        on={amending.on}
        said={(field) => said(bare(field))}
      />
      <fieldset className="package-part">
        <legend>Confirmed by a second person</legend>
        <p className="quiet">They confirm here, on this device. You stay signed in.</p>
        <TextField
          id={`${id}-name`}
          label="Their sign-in name"
          mono
          spellCheck={false}
          autoCapitalize="none"
          value={amending.signInName}
          onChange={({ target }) => amending.setSignInName(target.value)}
          error={said('confirmation.signInName') ?? said('signInName')}
        />
        <SecretField
          id={`${id}-secret`}
          whose="Their"
          value={amending.secret}
          onChange={amending.setSecret}
          error={said('confirmation.secret') ?? said('secret')}
        />
      </fieldset>
    </SheetDialog>
  );
}
