import { type FormEvent, useId, useState } from 'react';
import type { FieldMessage } from '../messages/error-summary.js';
import { fieldMessages } from '../messages/field-messages.js';

/** What is wrong, by the field's path: 'positions.0.label'. */
export type Faults = Readonly<Record<string, string>>;

interface SentAct<Words> {
  readonly error: unknown;
  readonly isPending: boolean;
  readonly mutate: (words: Words) => void;
  readonly reset: () => void;
}

interface ActFormOptions<Typed, Words> {
  readonly start: Typed;
  /** A few plain checks before sending; the server is the judge. */
  readonly check: (typed: Typed) => Faults;
  readonly words: (typed: Typed) => Words;
  readonly act: SentAct<Words>;
}

export interface FieldState {
  readonly id: string;
  readonly error: string | null;
}

export interface ActForm<Typed> {
  readonly typed: Typed;
  readonly change: (next: Partial<Typed>) => void;
  /** The id and the message of a field by its path. */
  readonly field: (path: string) => FieldState;
  /** All that is wrong, for the summary on top. */
  readonly messages: readonly FieldMessage[];
  /** Changes with each attempt. */
  readonly attempt: number;
  readonly busy: boolean;
  readonly submit: (event: FormEvent) => void;
}

/** What is typed in a form, its plain checks and the server's refusal, by the same field paths. */
export function useActForm<Typed extends object, Words>({
  start,
  check,
  words,
  act,
}: ActFormOptions<Typed, Words>): ActForm<Typed> {
  const base = useId();
  const [typed, setTyped] = useState(start);
  const [faults, setFaults] = useState<Faults>({});
  const [attempt, setAttempt] = useState(0);
  const refused = fieldMessages(act.error);
  const idOf = (path: string): string => `${base}-${path.replaceAll('.', '-')}`;
  const field = (path: string): FieldState => ({
    id: idOf(path),
    error: faults[path] ?? refused.find((entry) => entry.path === path)?.message ?? null,
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const found = check(typed);
    setFaults(found);
    setAttempt(attempt + 1);
    if (Object.keys(found).length > 0) act.reset();
    else if (!act.isPending) act.mutate(words(typed));
  };
  const own = Object.entries(faults).map(([path, message]) => ({ fieldId: idOf(path), message }));
  const theirs = refused.map(({ path, message }) => ({
    fieldId: path === null ? null : idOf(path),
    message,
  }));
  return {
    typed,
    change: (next) => setTyped((before) => ({ ...before, ...next })),
    field,
    messages: own.length > 0 ? own : theirs,
    // A refusal that arrives later than the press moves the focus again.
    attempt: attempt * 2 + (act.error === null ? 0 : 1),
    busy: act.isPending,
    submit,
  };
}
