import type { TableState } from './table-body.js';

interface Read {
  readonly data: unknown;
  readonly error: unknown;
  readonly isPending: boolean;
  readonly refetch: () => unknown;
}

/** What a table shows while its rows are read, or when they could not be. Rows already read stay. */
export function readState(read: Read): TableState | undefined {
  if (read.data !== undefined) return undefined;
  if (read.error !== null && read.error !== undefined)
    return { kind: 'failed', error: read.error, onRetry: () => void read.refetch() };
  return read.isPending ? { kind: 'loading' } : undefined;
}
