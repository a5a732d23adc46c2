import { StatusMark } from '../../ui/status/status-mark.js';
import type { ImportRow } from './imports-data.js';

type Standing = Pick<ImportRow, 'state' | 'failed' | 'ready'>;

/** How a file stands, in a word and a shape. */
export function StateMark({ state, failed, ready }: Standing) {
  switch (state) {
    case 'checking':
      return <StatusMark status="open" word="Being checked" />;
    case 'checked':
      if (failed > 0) return <StatusMark status="blocked" word="Rows with errors" />;
      return ready === 0 ? (
        <StatusMark status="closed" word="Nothing new" />
      ) : (
        <StatusMark status="open" word="Ready to apply" />
      );
    case 'applying':
      return <StatusMark status="open" word="Being applied" />;
    case 'applied':
      return <StatusMark status="signed" word="Applied" />;
    case 'cancelled':
      return <StatusMark status="closed" word="Cancelled" />;
  }
}
