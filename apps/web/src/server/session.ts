import { dataOrThrow } from '@strutbook/api-client/index.js';
import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { type QueryClient, queryOptions, useQuery } from '@tanstack/react-query';
import { api, holdCsrfToken } from './api.js';

export interface Session {
  readonly person: {
    readonly id: string;
    readonly fullName: string;
    readonly signInName: string;
    readonly licence: string | null;
    readonly roles: readonly string[];
  };
  readonly operator: { readonly code: string; readonly name: string };
  readonly csrfToken: string;
  readonly mustChangePassword: boolean;
  /** Whether a PIN is chosen that signs at a tablet. */
  readonly hasPin: boolean;
}

export interface SignInWords {
  readonly signInName: string;
  readonly password: string;
  readonly operatorCode?: string;
}

function held(session: Session): Session {
  holdCsrfToken(session.csrfToken);
  return session;
}

/** Who is signed in on this device; null when nobody is. */
export const sessionQuery = queryOptions({
  queryKey: ['session'],
  staleTime: 300_000,
  gcTime: Number.POSITIVE_INFINITY,
  // Without a connection it fails and the page says so; paused, it would leave the page blank.
  networkMode: 'always',
  queryFn: async ({ signal }): Promise<Session | null> => {
    try {
      return held(dataOrThrow(await api.GET('/api/session', { signal })));
    } catch (error) {
      if (error instanceof ProblemError && error.status === 401) return null;
      throw error;
    }
  },
});

/** Signs in. Throws: ProblemError; its fields name operatorCode when the server needs that too. */
export async function signIn(queries: QueryClient, words: SignInWords): Promise<Session> {
  const session = held(dataOrThrow(await api.POST('/api/session', { body: words })));
  queries.setQueryData(sessionQuery.queryKey, session);
  return session;
}

/** Signs out and forgets all that was read. */
export async function signOut(queries: QueryClient): Promise<void> {
  dataOrThrow(await api.DELETE('/api/session'));
  holdCsrfToken(null);
  queries.clear();
}

export interface PasswordWords {
  readonly currentPassword: string;
  readonly newPassword: string;
}

/** Changes the password, and reads the session again. Throws: ProblemError. */
export async function changePassword(queries: QueryClient, words: PasswordWords): Promise<void> {
  dataOrThrow(await api.POST('/api/session/password', { body: words }));
  await queries.fetchQuery({ ...sessionQuery, staleTime: 0 });
}

export interface PinWords {
  readonly password: string;
  readonly pin: string;
}

/** Chooses the PIN that signs at a tablet. Throws: ProblemError. */
export async function choosePin(queries: QueryClient, words: PinWords): Promise<void> {
  const session = held(dataOrThrow(await api.POST('/api/session/pin', { body: words })));
  queries.setQueryData(sessionQuery.queryKey, session);
}

/** The session on pages that only open with one; null elsewhere. */
export function useSession(): Session | null {
  return useQuery(sessionQuery).data ?? null;
}

/** Whether this person may only read: then no act is offered anywhere. */
export function useReadOnly(): boolean {
  const session = useSession();
  return session === null || isReadOnly(session.person.roles);
}

/** An auditor with no other role reads everything and changes nothing. */
export const isReadOnly = (roles: readonly string[]): boolean => roles.every((role) => role === 'auditor');
