import { useId, useState } from 'react';
import { useAct } from '../../../server/act.js';
import type { Order, WorkPackage } from '../../../server/work.js';
import { NO_SECRET } from '../../../ui/fields/secret-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import type { FieldMessage } from '../../../ui/messages/error-summary.js';
import { fieldMessage, summaryOf } from '../../../ui/messages/field-messages.js';
import { amendOrder } from '../package-acts.js';
import { draftOf, ORDER_IDS, type OrderOn, orderFaults, orderRequest } from './order-draft.js';
import { useOrderPlaces } from './places-there.js';

export interface Amending {
  readonly work: WorkPackage;
  readonly order: Order;
  readonly onClose: () => void;
}

type Faults = Readonly<Record<string, string>>;

/** The order as it shall be, why, and who confirms it: as typed, checked, and sent as one act. */
export function useAmending({ work, order, onClose }: Amending) {
  const id = useId();
  const on: OrderOn =
    order.positionNumber !== null && work.airframe !== null
      ? { kind: 'airframe', id: work.airframe.id }
      : { kind: 'component', id: work.component?.id ?? '' };
  const [draft, setDraft] = useState(() => draftOf(order));
  const [reason, setReason] = useState('');
  const [signInName, setSignInName] = useState('');
  const [secret, setSecret] = useState(NO_SECRET);
  const [faults, setFaults] = useState<Faults>({});
  const [attempt, setAttempt] = useState(0);
  const there = useOrderPlaces(on, draft).chosen?.there ?? null;
  const ids: Readonly<Record<string, string>> = {
    ...ORDER_IDS,
    reason: `${id}-reason`,
    'confirmation.signInName': `${id}-name`,
    'confirmation.secret': `${id}-secret`,
  };
  const act = useAct({
    perform: amendOrder,
    refresh: [[]],
    onDone: ({ entriesToRenew }) => {
      announce(
        `The order of ${work.number} is amended. The order before it stays on record.${
          entriesToRenew.length === 0 ? '' : ` Plates and papers are to be read anew.`
        }`,
      );
      onClose();
    },
  });
  const missing = (): Faults => ({
    ...orderFaults(draft, on, there),
    ...(reason.trim() === '' ? { reason: 'Enter why the order is amended' } : {}),
    ...(signInName.trim() === ''
      ? { 'confirmation.signInName': 'Enter the sign-in name of the person who confirms it' }
      : {}),
    ...(secret.secret === ''
      ? {
          'confirmation.secret': `The person who confirms enters their ${secret.method === 'pin' ? 'PIN' : 'password'}`,
        }
      : {}),
  });
  const send = () => {
    const found = missing();
    setFaults(found);
    setAttempt(attempt + 1);
    if (Object.keys(found).length > 0) {
      act.reset();
      return;
    }
    act.mutate({
      packageId: work.id,
      version: work.version,
      body: {
        order: orderRequest(draft, on, there),
        reason: reason.trim(),
        confirmation: { signInName: signInName.trim(), ...secret },
      },
    });
  };
  const said = (field: string): string | null => faults[field] ?? fieldMessage(act.error, field);
  const messages: readonly FieldMessage[] =
    Object.keys(faults).length > 0
      ? Object.entries(faults).map(([field, message]) => ({ fieldId: ids[field] ?? null, message }))
      : summaryOf(act.error, ids);
  return {
    ...{ ids, on, draft, setDraft, reason, setReason, signInName, setSignInName, secret, setSecret },
    ...{ attempt, act, send, said, messages },
  };
}
