import type { ReactNode } from 'react';
import { useOfflineSince } from '../../server/connection.js';
import { Button } from '../../ui/actions/button.js';
import type { ActForm } from '../../ui/fields/act-form.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';

interface ActFrameProps<Typed> {
  readonly form: ActForm<Typed>;
  /** The word of the button: 'Send it to the shop'. */
  readonly act: string;
  readonly children: ReactNode;
}

/** A form with its one act: what is wrong on top, the fields, the button. */
export function ActFrame<Typed>({ form, act, children }: ActFrameProps<Typed>) {
  const offline = useOfflineSince() !== null;
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      {children}
      <div>
        <Button type="submit" kind="primary" busy={form.busy} offBecause={offline ? OFF_WHILE_OFFLINE : null}>
          {form.busy ? 'Saving' : act}
        </Button>
      </div>
    </form>
  );
}
