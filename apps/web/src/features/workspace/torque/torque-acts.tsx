import { Button } from '../../../ui/actions/button.js';
import type { TorqueDesk } from './use-torque.js';

/** What can be done with the reading: record it; or, out of range, torque again or keep it as rejected. */
export function TorqueActs({ desk }: { readonly desk: TorqueDesk }) {
  const { left, judgement, record, off, blocked, busy } = desk;
  const because = off ?? (blocked === null ? null : 'Off until a tool in date is chosen');
  const rejected = left && judgement?.verdict === 'rejected';
  if (rejected)
    return (
      <div className="stack">
        <div className="row">
          <Button key="again" large offBecause={because} busy={busy} onClick={() => record('again')}>
            Torque again
          </Button>
          <Button key="keep" large offBecause={because} busy={busy} onClick={() => record('keep')}>
            Keep as rejected
          </Button>
        </div>
        <p className="quiet small">
          Both keep this attempt on record. The step cannot be signed while its last attempt is rejected.
        </p>
      </div>
    );
  return (
    <div>
      <Button key="record" large offBecause={because} busy={busy} onClick={() => record('next')}>
        {busy ? 'Recording' : `Record ${desk.what}`}
      </Button>
    </div>
  );
}
