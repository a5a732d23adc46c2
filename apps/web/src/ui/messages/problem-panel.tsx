import { NO_ANSWER, ProblemError } from '@strutbook/api-client/problem-error.js';
import { Button } from '../actions/button.js';
import './messages.css';

interface ProblemPanelProps {
  readonly error: unknown;
  /** What was being done: 'Reading the positions'. */
  readonly doing?: string;
  /** What is safe: by default, that nothing was changed. */
  readonly safe?: string;
  readonly onRetry?: (() => void) | undefined;
}

function whatFailed(error: unknown): string {
  if (error instanceof ProblemError) return error.problem.detail ?? error.problem.title;
  return 'This part of the page stopped working.';
}

function heading(error: unknown, doing: string | undefined): string {
  const failed = doing === undefined ? null : `${doing} failed`;
  if (error instanceof ProblemError) return failed ?? error.problem.title;
  return failed ?? 'This part failed';
}

/** A failure that stays in its panel: what failed, what is safe, trying again, the reference. */
export function ProblemPanel({ error, doing, safe, onRetry }: ProblemPanelProps) {
  const problem = error instanceof ProblemError ? error.problem : null;
  const asked = problem !== null && problem.code !== NO_ANSWER;
  return (
    <section className="panel" role="alert">
      <h2>{heading(error, doing)}</h2>
      <p>{whatFailed(error)}</p>
      {problem !== null && problem.fields.length > 0 && (
        <ul className="panel-fixes">
          {problem.fields.map((entry) => (
            <li key={`${entry.field} ${entry.reason}`}>
              {entry.reason} {entry.fix}
            </li>
          ))}
        </ul>
      )}
      <p>{safe ?? 'Nothing was changed. What is on record is safe.'}</p>
      {onRetry !== undefined && <Button onClick={onRetry}>Try again</Button>}
      {asked && problem.requestId !== null && (
        <p className="panel-reference">
          Reference <code>{problem.requestId}</code>
        </p>
      )}
    </section>
  );
}
