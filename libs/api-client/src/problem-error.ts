/** One field the server refuses: which, why, and what to enter instead. */
export interface FieldProblem {
  readonly field: string;
  readonly reason: string;
  readonly fix: string;
}

/** The body of a refusal. Source: RFC 9457, with code, fields and requestId as extension members. */
export interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string | null;
  readonly code: string;
  readonly fields: readonly FieldProblem[];
  readonly requestId: string | null;
}

/** The code of a problem made here because no answer came back at all. */
export const NO_ANSWER = 'NO_ANSWER';

/** The server refused, failed, or did not answer (status 0, code NO_ANSWER). */
export class ProblemError extends Error {
  readonly problem: Problem;
  /** The whole body, for members that one route alone adds. */
  readonly body: unknown;

  constructor(problem: Problem, body: unknown = null) {
    super(problem.detail ?? problem.title);
    this.name = 'ProblemError';
    this.problem = problem;
    this.body = body;
  }

  get status(): number {
    return this.problem.status;
  }

  get code(): string {
    return this.problem.code;
  }

  get fields(): readonly FieldProblem[] {
    return this.problem.fields;
  }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const text = (value: unknown): string | null => (typeof value === 'string' && value !== '' ? value : null);

function fieldProblems(value: unknown): FieldProblem[] {
  if (!Array.isArray(value)) return [];
  return value.filter(isRecord).map((entry) => ({
    field: text(entry['field']) ?? '',
    reason: text(entry['reason']) ?? '',
    fix: text(entry['fix']) ?? '',
  }));
}

/** Reads any error answer as a problem, also one that a proxy wrote in its own way. Total. */
export function problemFrom(
  body: unknown,
  response: Pick<Response, 'status' | 'statusText' | 'headers'>,
): ProblemError {
  const said = isRecord(body) ? body : {};
  return new ProblemError(
    {
      type: text(said['type']) ?? 'about:blank',
      title: text(said['title']) ?? (text(response.statusText) || 'The server refused without saying why'),
      status: response.status,
      detail: text(said['detail']),
      code: text(said['code']) ?? `HTTP_${response.status}`,
      fields: fieldProblems(said['fields']),
      requestId: text(said['requestId']) ?? response.headers.get('x-request-id'),
    },
    body,
  );
}

/** The problem that stands for "no answer came": the network, or a stopped server. */
export function noAnswer(): ProblemError {
  return new ProblemError({
    type: 'about:blank',
    title: 'The server did not answer',
    status: 0,
    detail: 'The server did not answer. Check the connection, then try again.',
    code: NO_ANSWER,
    fields: [],
    requestId: null,
  });
}
