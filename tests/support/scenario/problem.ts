import type { Answer } from '../http-client.js';

/** One field to blame in a refusal. */
export interface ProblemField {
  readonly field: string;
  readonly reason: string;
  readonly fix: string;
}

/** A refusal as the API writes it. */
export interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly code: string;
  readonly fields?: readonly ProblemField[];
  readonly holders?: readonly string[];
}

/** The answer in one line, for a message. */
export function inShort({ status, body }: Answer): string {
  return `${status} ${typeof body === 'string' ? body.slice(0, 300) : JSON.stringify(body)}`;
}

/** The body of an act that was done. Throws, with the answer, when it was refused. */
export function done<T>(answer: Answer<T>): T {
  if (answer.status >= 200 && answer.status < 300) return answer.body;
  throw new Error(`refused: ${inShort(answer)}`);
}

/** The problem an answer carries. Throws when it is none that follows RFC 9457 with our code. */
export function problemOf(answer: Answer): Problem {
  const problem = answer.body as Problem;
  const wellFormed =
    (answer.headers.get('content-type') ?? '').startsWith('application/problem+json') &&
    problem.status === answer.status &&
    [problem.type, problem.title, problem.detail, problem.code].every(
      (text) => typeof text === 'string' && text !== '',
    );
  if (!wellFormed) throw new Error(`not a problem document: ${inShort(answer)}`);
  return problem;
}
