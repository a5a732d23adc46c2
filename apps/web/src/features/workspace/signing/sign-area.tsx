import { useReadOnly } from '../../../server/session.js';
import { Button } from '../../../ui/actions/button.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { useDesk } from '../work/use-desk.js';
import type { Step } from '../work/work-shapes.js';
import { useSignState } from './may-sign.js';

const WORDS = { done: 'Sign', inspection: 'Sign the inspection' } as const;

/** The way to the signature, or why there is none: at the right, where no other button of a step stands. */
export function SignArea({ step }: { readonly step: Step }) {
  const { onSign, held } = useDesk();
  const readOnly = useReadOnly();
  const { meaning, hidden, off, notMine, alone } = useSignState(step);
  if (meaning === null) return null;
  if (readOnly) return <p className="quiet">You read only.</p>;
  if (held === step.id)
    return (
      <p className="sign-area">
        <StatusMark status="rejected" word="First record the reading that is out of range, or clear it" />
      </p>
    );
  if (hidden)
    return (
      <p className="sign-area">
        <StatusMark status="rejected" word="Cannot be signed: an attempt stands rejected" />
      </p>
    );
  if (notMine !== null)
    return (
      <div className="sign-area">
        <p>{notMine}</p>
        <Button large offBecause={off} onClick={() => onSign(step, meaning, 'another')}>
          Another person signs here
        </Button>
        {alone && (
          <Button kind="quiet" offBecause={off} onClick={() => onSign(step, meaning, 'alone')}>
            Nobody else can be had: inspect it again yourself
          </Button>
        )}
      </div>
    );
  return (
    <div className="sign-area">
      <Button kind="primary" large offBecause={off} onClick={() => onSign(step, meaning, 'me')}>
        {WORDS[meaning]}
      </Button>
    </div>
  );
}
