import type { ReactNode } from 'react';
import { useOfflineSince } from '../../server/connection.js';
import { Button } from '../../ui/actions/button.js';
import type { ActForm } from '../../ui/fields/act-form.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';

/** A small form in a sheet: what is wrong, the fields, the button. */
export function SheetForm<Typed>({
  form,
  act,
  children,
}: {
  readonly form: ActForm<Typed>;
  readonly act: string;
  readonly children: ReactNode;
}) {
  const offline = useOfflineSince() !== null;
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      {children}
      <div>
        <Button type="submit" kind="primary" busy={form.busy} offBecause={offline ? OFF_WHILE_OFFLINE : null}>
          {act}
        </Button>
      </div>
    </form>
  );
}
