import { StatusMark } from '../../../ui/status/status-mark.js';
import type { Status } from '../../../ui/status/statuses.js';
import type { Standing } from '../work/work-shapes.js';

const SHOWN: Readonly<Record<Standing, Status>> = {
  open: 'open',
  signed: 'signed',
  'to-inspect': 'to-inspect',
  blocked: 'blocked',
  rejected: 'rejected',
  changed: 'changed',
};

/** How a step stands, by shape and word. */
export function StandingMark({ standing }: { readonly standing: Standing }) {
  return <StatusMark status={SHOWN[standing]} />;
}
