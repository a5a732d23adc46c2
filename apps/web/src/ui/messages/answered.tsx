import { ProblemError } from '@strutbook/api-client/problem-error.js';
import type { ReactNode } from 'react';
import { utcTime } from '../../format/utc-date.js';
import { Checking, Loading } from './loading.js';
import { ProblemPanel } from './problem-panel.js';

/** What is read of a query. */
export interface Asked<Data> {
  readonly data: Data | undefined;
  readonly error: Error | null;
  readonly fetchStatus: 'fetching' | 'paused' | 'idle';
  readonly dataUpdatedAt: number;
  readonly refetch: () => unknown;
}

interface AnsweredProps<Data> {
  readonly query: Asked<Data>;
  /** 'Reading the positions' */
  readonly doing: string;
  /** Bars to show while it is read for the first time. */
  readonly lines?: number;
  readonly children: (data: Data) => ReactNode;
}

const MINUTE_MS = 60_000;

const isMissing = (error: Error | null): error is ProblemError =>
  error instanceof ProblemError && error.status === 404;

/** What was never recorded does not come by trying again. */
function Missing({ error }: { readonly error: ProblemError }) {
  return (
    <section className="panel" role="alert">
      <h2>Not on record</h2>
      <p>{error.message}</p>
      <p>The address may be mistyped, or belong to another operator.</p>
    </section>
  );
}

/** What was read, or why there is nothing to show. What was read before stays in sight while it is read again. */
export function Answered<Data>({ query, doing, lines = 4, children }: AnsweredProps<Data>) {
  const { data, error, fetchStatus, dataUpdatedAt, refetch } = query;
  const again = () => void refetch();
  if (data === undefined) {
    if (isMissing(error)) return <Missing error={error} />;
    if (error !== null) return <ProblemPanel error={error} doing={doing} onRetry={again} />;
    if (fetchStatus === 'paused')
      return (
        <section className="panel" role="status">
          <h2>Not read yet</h2>
          <p>There is no connection. It is read as soon as there is one.</p>
        </section>
      );
    return <Loading label={doing} lines={lines} />;
  }
  return (
    <>
      {error !== null && (
        <ProblemPanel
          error={error}
          doing={`${doing} again`}
          safe={`Shown below is what was read at ${utcTime(Math.floor(dataUpdatedAt / MINUTE_MS))}.`}
          onRetry={again}
        />
      )}
      {error === null && fetchStatus === 'fetching' && (
        <div className="checking-corner no-print">
          <Checking />
        </div>
      )}
      {children(data)}
    </>
  );
}
