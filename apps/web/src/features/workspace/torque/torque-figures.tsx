import type { TorqueCapture } from '@strutbook/domain/work/capture.js';
import type { Judgement } from '@strutbook/domain/work/entry.js';
import { asksRunOn } from './torque-draft.js';

interface TorqueFiguresProps {
  readonly capture: TorqueCapture;
  readonly judgement: Judgement | null;
}

function Figure({ term, children }: { readonly term: string; readonly children: string }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  );
}

/** What the data asks for, and what was computed: at the fastener, with run-on, and the window of the tool. */
export function TorqueFigures({ capture, judgement }: TorqueFiguresProps) {
  const computed = judgement?.computed ?? {};
  const withRunOn = asksRunOn(capture) && capture.runOn.rule !== 'none';
  return (
    <dl className="figures">
      <Figure term={`Range of the data, ${capture.thread} thread`}>
        {`${capture.low} to ${capture.high} ${capture.unit}`}
      </Figure>
      {withRunOn && (
        <Figure term="Required with run-on">{computed['required'] ?? 'Enter the run-on torque'}</Figure>
      )}
      <Figure term="At the fastener">{computed['atFastener'] ?? 'Not known yet'}</Figure>
      {(computed['window'] ?? null) !== null && (
        <Figure term={capture.binds === 'window' ? 'Window of the tool, binding' : 'Window of the tool'}>
          {computed['window'] ?? ''}
        </Figure>
      )}
      {(computed['setting'] ?? null) !== null && computed['setting'] !== computed['required'] && (
        <Figure term="This wrench shows">{computed['setting'] ?? ''}</Figure>
      )}
    </dl>
  );
}
