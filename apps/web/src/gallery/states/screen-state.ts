/** What the server answers, or 'never' for a question that is still on its way, or 'lost' for none at all. */
export type StateAnswer = { readonly status?: number; readonly body: unknown } | 'never' | 'lost';

/** One state of a real screen: its address, and what the server says there. */
export interface ScreenState {
  readonly name: string;
  /** What is to be seen. */
  readonly title: string;
  /** The screen's address, without the mark of the state. */
  readonly path: string;
  /** Who looks; an administrator who may also release, unless told. */
  readonly roles?: readonly string[];
  readonly offline?: boolean;
  /** The answer after which the connection is lost: 'GET /api/board'. */
  readonly lostAfter?: string;
  /** By method and path: 'GET /api/board'. */
  readonly answers: Readonly<Record<string, StateAnswer>>;
}

const PROBLEM = { type: 'about:blank', fields: [], requestId: '01J9-8A11-07' } as const;

/** The server failed. */
export const FAILED: StateAnswer = {
  status: 500,
  body: {
    ...PROBLEM,
    title: 'The server failed',
    status: 500,
    detail: 'The records could not be read.',
    code: 'INTERNAL',
  },
};

/** There is no such thing. */
export const MISSING: StateAnswer = {
  status: 404,
  body: {
    ...PROBLEM,
    title: 'Not on record',
    status: 404,
    detail: 'There is no such thing in your records.',
    code: 'NOT_FOUND',
  },
};

/** The session of whoever looks. */
export const sessionOf = (roles: readonly string[]) => ({
  person: { id: 'p-1', fullName: 'Wen Tolvarsen', signInName: 'wen.tolvarsen', licence: 'ZQ.66.0001', roles },
  operator: { code: 'ZQD', name: 'Dravenholm Air (gallery)' },
  csrfToken: 'gallery',
  mustChangePassword: false,
  hasPin: false,
});
