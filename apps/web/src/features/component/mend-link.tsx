import { useMay } from '../../server/authority.js';
import { RouteLink } from '../../ui/actions/route-link.js';

/** What mends each reason why a life is not verified: where to go, and its words. */
const MENDS: Readonly<Record<string, { readonly ask: string; readonly words: string }>> = {
  TRACE_GAP: { ask: 'acceptance', words: 'Accept the worst case' },
  RATING_UNKNOWN: { ask: 'acceptance', words: 'Accept the worst case' },
  CYCLES_UNKNOWN: { ask: 'opening', words: 'Record an opening balance' },
  MINUTES_UNKNOWN: { ask: 'opening', words: 'Record an opening balance' },
};

interface MendLinkProps {
  readonly componentId: string;
  /** The reason, as the server names it. */
  readonly code: string;
}

/** The way to the act that mends a reason for 'not verified', for those who may do it. */
export function MendLink({ componentId, code }: MendLinkProps) {
  const may = useMay('keep-records');
  if (!may) return null;
  if (code === 'NO_LIMIT_RECORDED')
    return (
      <RouteLink className="no-print" href="/register/life-limits">
        Record the life limit
      </RouteLink>
    );
  const mend = MENDS[code];
  return (
    <RouteLink
      className="no-print"
      href={`/register/components/${componentId}${mend === undefined ? '' : `?ask=${mend.ask}`}`}
    >
      {mend?.words ?? 'Look at its records'}
    </RouteLink>
  );
}
