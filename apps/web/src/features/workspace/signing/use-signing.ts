import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useId, useState } from 'react';
import { counted } from '../../../format/counts.js';
import { minuteNow } from '../../../format/now.js';
import { parseMoment } from '../../../format/utc-moment.js';
import { typedMoment, wireMinute } from '../../../format/when.js';
import { useAct } from '../../../server/act.js';
import { useSession } from '../../../server/session.js';
import { announce } from '../../../ui/messages/announcements.js';
import type { FieldMessage } from '../../../ui/messages/error-summary.js';
import { summaryOf } from '../../../ui/messages/field-messages.js';
import { BLANK_FIGURES, figuresOf } from '../../../ui/reading/figures.js';
import { useDesk } from '../work/use-desk.js';
import { WORK_KEY } from '../work/work-queries.js';
import type { Meaning, Step } from '../work/work-shapes.js';
import { keepMethod, useFirstMethod } from './last-method.js';
import { ownWork } from './may-sign.js';
import { isConflict } from './sign-conflict.js';
import { faultsOf, type SignDraft, signIds, type Who } from './sign-draft.js';
import { signStep, statementQuery } from './signing-queries.js';

const NOTHING_TYPED = { signInName: '', reason: '', secret: '' } as const;

const nowTyped = (): string => typedMoment(wireMinute(minuteNow()));

export interface SigningOptions {
  readonly step: Step;
  readonly meaning: Meaning;
  readonly who: Who;
  readonly onClose: () => void;
}

/** The server's words for what is typed. Names and reasons are part of them: asked once a field is left. */
function useStatement({ step, meaning }: SigningOptions, draft: SignDraft) {
  const [left, setLeft] = useState({ signInName: '', reason: '' });
  const moment = parseMoment(draft.performedAt);
  const performedAt = moment.ok ? wireMinute(moment.instant) : null;
  const signInName = draft.signInName.trim();
  const reason = draft.reason.trim();
  const other = draft.who === 'another' ? { signInName: left.signInName } : {};
  const alone = draft.who === 'alone';
  const named = draft.who !== 'another' || left.signInName !== '';
  const reasoned = !alone || left.reason !== '';
  const statement = useQuery(
    statementQuery({
      stepId: step.id,
      meaning,
      performedAt,
      signer: named && reasoned ? other : null,
      ...(alone ? { reinspectionReason: left.reason } : {}),
    }),
  );
  return {
    statement,
    performedAt,
    extra: { ...other, ...(alone ? { reinspectionReason: left.reason } : {}) },
    /** Who is named to sign here; empty while nobody is. */
    named: left.signInName,
    /** Whether the words shown are those of what is typed now. */
    isRead: left.signInName === signInName && left.reason === reason,
    read: () => setLeft({ signInName, reason }),
    forget: () => setLeft((before) => ({ ...before, signInName: '' })),
    waitsFor: named ? (reasoned ? null : ('reason' as const)) : ('name' as const),
  };
}

const heldWords = (count: number): string =>
  count === 0 ? '' : ` ${counted(count, 'point')} held against what was fitted: see the release check.`;

const conflictOf = (error: unknown) => (isConflict(error) ? error : null);

function useSignAct({ step, onClose }: SigningOptions) {
  return useAct({
    perform: signStep,
    refresh: [WORK_KEY, ['packages']],
    onDone: ({ person, objections }) => {
      announce(`Step ${step.definition.number} is signed by ${person}.${heldWords(objections.length)}`);
      onClose();
    },
  });
}

/** What is typed to sign a step, the server's words for it, and its refusal. */
export function useSigning(options: SigningOptions) {
  const { step, meaning, who } = options;
  const base = useId();
  const method = useFirstMethod();
  const isCounted =
    useDesk().work.order?.slot === 'apu' && meaning === 'done' && step.definition.moves !== null;
  const [draft, setDraft] = useState<SignDraft>({
    ...NOTHING_TYPED,
    ...{ performedAt: nowTyped(), who, method },
    figures: isCounted ? BLANK_FIGURES : null,
  });
  const [faults, setFaults] = useState<readonly FieldMessage[]>([]);
  const [attempt, setAttempt] = useState(0);
  const words = useStatement(options, draft);
  const { statement, performedAt } = words;
  const ids = signIds(base);
  const refused = ownWork(step, meaning, useSession(), words.named);
  const own = refused === null ? [] : [{ fieldId: ids.signInName, message: refused }];
  const act = useSignAct(options);
  const conflict =
    conflictOf(act.error) ?? (statement.data === undefined ? conflictOf(statement.error) : null);
  const change = (next: Partial<SignDraft>) => {
    if (next.method !== undefined && next.method !== draft.method) keepMethod(next.method);
    setFaults([]);
    setDraft((before) => ({ ...before, ...next }));
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    words.read();
    const found = [...faultsOf(draft, ids), ...own];
    setAttempt(attempt + 1);
    setFaults(found);
    const digest = statement.data?.digest;
    if (found.length > 0) act.reset();
    else if (words.isRead && digest !== undefined && performedAt !== null && !act.isPending) {
      const { method: by, secret, figures } = draft;
      const reading = figures === null ? {} : { counterReading: figuresOf(figures) };
      const signed = { stepId: step.id, meaning, performedAt, digest };
      act.mutate({ ...signed, method: by, secret, ...words.extra, ...reading });
    }
  };
  const again = () => {
    const changed = conflict?.code === 'CHECK_CHANGED';
    act.reset();
    change(changed ? { secret: '' } : { secret: '', who: 'another', signInName: '' });
    if (changed) void statement.refetch();
    else words.forget();
  };
  const said = faults.length > 0 ? faults : isConflict(act.error) ? [] : summaryOf(act.error, ids);
  return {
    draft,
    change,
    words,
    submit,
    again,
    ids,
    errorOf: (fieldId: string): string | null =>
      [...said, ...own, ...summaryOf(statement.error, ids)].find((entry) => entry.fieldId === fieldId)
        ?.message ?? null,
    messages: said,
    attempt: attempt * 2 + (act.error === null ? 0 : 1),
    busy: act.isPending,
    conflict,
  };
}

export type Signing = ReturnType<typeof useSigning>;
