import type { TorqueCapture } from '@strutbook/domain/work/capture.js';
import type { Judgement } from '@strutbook/domain/work/entry.js';
import { asksRunOn } from './torque-draft.js';

interface TorqueFiguresProps {
  readonly capture: TorqueCapture;
  readonly judgement: Judgement | null;
}

interface FigureProps {
  readonly term: string;
  readonly figure: string | null | undefined;
  /** In place of a figure that is not known. */
  readonly unknown?: string;
}

function Figure({ term, figure, unknown = '' }: FigureProps) {
  return (
    <div>
      <dt>{term}</dt>
      <dd className={(figure ?? null) === null ? 'figure-words' : ''}>{figure ?? unknown}</dd>
    </div>
  );
}

/** What the data asks for, and what was computed: at the fastener, with run-on, and the window of the tool. */
export function TorqueFigures({ capture, judgement }: TorqueFiguresProps) {
  const computed = judgement?.computed ?? {};
  const withRunOn = asksRunOn(capture) && capture.runOn.rule !== 'none';
  return (
    <dl className="figures">
      <Figure
        term={`Range of the data, ${capture.thread} thread`}
        figure={`${capture.low} to ${capture.high} ${capture.unit}`}
      />
      {withRunOn && (
        <Figure term="Required with run-on" figure={computed['required']} unknown="Enter the run-on torque" />
      )}
      <Figure term="At the fastener" figure={computed['atFastener']} unknown="Not known yet" />
      {(computed['window'] ?? null) !== null && (
        <Figure
          term={`Allowing for the tool’s deviation, ${capture.binds === 'window' ? 'binding' : 'advice only'}`}
          figure={computed['window']}
        />
      )}
      {(computed['setting'] ?? null) !== null && computed['setting'] !== computed['required'] && (
        <Figure term="This wrench shows" figure={computed['setting']} />
      )}
    </dl>
  );
}
