import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useId, useState } from 'react';
import { parseMoment } from '../../../format/utc-moment.js';
import { typedMoment, wireMinute } from '../../../format/when.js';
import { useAct } from '../../../server/act.js';
import { announce } from '../../../ui/messages/announcements.js';
import type { FieldMessage } from '../../../ui/messages/error-summary.js';
import { summaryOf } from '../../../ui/messages/field-messages.js';
import { WORK_KEY } from '../work/work-queries.js';
import type { Meaning, Step } from '../work/work-shapes.js';
import { keepMethod, lastMethod } from './last-method.js';
import { isConflict } from './sign-conflict.js';
import { type Method, signStep, statementQuery } from './signing-queries.js';

export type Who = 'me' | 'another';

export interface SignDraft {
  readonly performedAt: string;
  readonly who: Who;
  readonly signInName: string;
  readonly method: Method;
  readonly secret: string;
}

const nowTyped = (): string => typedMoment(wireMinute(Math.floor(Date.now() / 60_000)));

interface SigningOptions {
  readonly step: Step;
  readonly meaning: Meaning;
  readonly who: Who;
  readonly onClose: () => void;
}

/** What is typed to sign a step, the server's words for it, and its refusal. */
export function useSigning({ step, meaning, who, onClose }: SigningOptions) {
  const base = useId();
  const [draft, setDraft] = useState<SignDraft>({
    performedAt: nowTyped(),
    who,
    signInName: '',
    method: lastMethod(),
    secret: '',
  });
  const [faults, setFaults] = useState<readonly FieldMessage[]>([]);
  const [attempt, setAttempt] = useState(0);
  const moment = parseMoment(draft.performedAt);
  const performedAt = moment.ok ? wireMinute(moment.instant) : null;
  const statement = useQuery(statementQuery({ stepId: step.id, meaning, performedAt }));
  const ids = {
    performedAt: `${base}-at`,
    signInName: `${base}-name`,
    secret: `${base}-secret`,
  };
  const act = useAct({
    perform: signStep,
    refresh: [WORK_KEY, ['packages']],
    onDone: () => {
      announce(`Step ${step.definition.number} is signed.`);
      onClose();
    },
  });
  const change = (next: Partial<SignDraft>) => {
    if (next.method !== undefined) keepMethod(next.method);
    setDraft((before) => ({ ...before, ...next }));
  };
  const missing = (): FieldMessage[] => [
    ...(moment.ok ? [] : [{ fieldId: ids.performedAt, message: moment.reason }]),
    ...(draft.who === 'another' && draft.signInName.trim() === ''
      ? [{ fieldId: ids.signInName, message: 'Enter the sign-in name of the person who signs' }]
      : []),
    ...(draft.secret === ''
      ? [
          {
            fieldId: ids.secret,
            message: `Enter the ${draft.method === 'pin' ? 'PIN' : 'password'}, to sign`,
          },
        ]
      : []),
  ];
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const found = missing();
    setAttempt(attempt + 1);
    setFaults(found);
    const digest = statement.data?.digest;
    if (found.length > 0) act.reset();
    else if (digest !== undefined && performedAt !== null && !act.isPending) {
      const { method, secret, signInName } = draft;
      const named = draft.who === 'another' ? { signInName: signInName.trim() } : {};
      act.mutate({ stepId: step.id, meaning, performedAt, digest, method, secret, ...named });
    }
  };
  const again = () => {
    act.reset();
    change({ secret: '' });
    void statement.refetch();
  };
  const said = faults.length > 0 ? faults : isConflict(act.error) ? [] : summaryOf(act.error, ids);
  const errorOf = (id: string): string | null => said.find(({ fieldId }) => fieldId === id)?.message ?? null;
  return {
    draft,
    change,
    statement,
    submit,
    again,
    ids,
    errorOf,
    messages: said,
    attempt: attempt * 2 + (act.error === null ? 0 : 1),
    busy: act.isPending,
    conflict: isConflict(act.error) ? act.error : null,
  };
}

export type Signing = ReturnType<typeof useSigning>;
