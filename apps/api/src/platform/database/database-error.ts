/** What PostgreSQL said, whichever library passed it on. */
export interface DatabaseError {
  /** SQLSTATE, five characters. */
  readonly code: string;
  readonly message: string;
  readonly detail: string | null;
  readonly constraint: string | null;
}

const text = (value: unknown): string | null => (typeof value === 'string' ? value : null);

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

/** The constraint's name, which Prisma gives as an index, and otherwise only inside the message. */
function constraintOf(said: Readonly<Record<string, unknown>>, message: string): string | null {
  const named = said['constraint'];
  if (typeof named === 'string') return named;
  if (isRecord(named) && typeof named['index'] === 'string') return named['index'];
  return /constraint "([^"]+)"/.exec(message)?.[1] ?? null;
}

/** The database's own error inside `error`, from `pg` or from Prisma; null when it is another error. Total. */
export function databaseErrorIn(error: unknown, depth = 0): DatabaseError | null {
  if (!isRecord(error) || depth > 6) return null;
  const code = text(error['originalCode']) ?? text(error['code']);
  if (code !== null && /^[0-9A-Z]{5}$/.test(code) && !/^P\d{4}$/.test(code)) {
    const message = text(error['originalMessage']) ?? text(error['message']) ?? '';
    return { code, message, detail: text(error['detail']), constraint: constraintOf(error, message) };
  }
  const meta = error['meta'];
  const inMeta = isRecord(meta) ? databaseErrorIn(meta['driverAdapterError'], depth + 1) : null;
  return inMeta ?? databaseErrorIn(error['cause'], depth + 1);
}
