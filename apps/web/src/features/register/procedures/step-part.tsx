import type { AccountableItem, StepDefinition } from '@strutbook/domain/work/step.js';
import { Notice } from '../../../ui/messages/notice.js';
import { FactList } from '../../../ui/page/fact-list.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { captureLines } from './capture-words.js';

interface StepPartProps {
  readonly step: StepDefinition;
  readonly steps: readonly StepDefinition[];
  readonly items: readonly AccountableItem[];
}

const itemWords = (keys: readonly string[], items: readonly AccountableItem[]): string =>
  keys
    .map((key) => {
      const item = items.find((entry) => entry.key === key);
      if (item === undefined) return key;
      return item.side === null ? item.name : `${item.name}, ${item.side}`;
    })
    .join('; ');

/** What surrounds the action: order, what is opened and closed, what moves, and the data behind it. */
function Around({ step, steps, items }: StepPartProps) {
  const { waitsFor, opens, closes, moves, source } = step;
  const numbers = waitsFor.map((key) => steps.find((entry) => entry.key === key)?.number ?? key);
  const facts: readonly (readonly [string, string])[] = [
    ...(numbers.length === 0
      ? []
      : [['Waits for', `${numbers.length === 1 ? 'step' : 'steps'} ${numbers.join(', ')}`] as const]),
    ...(opens.length === 0 ? [] : [['Opens', itemWords(opens, items)] as const]),
    ...(closes.length === 0 ? [] : [['Closes', itemWords(closes, items)] as const]),
    ...(moves === null
      ? []
      : [
          [
            'On record',
            moves === 'removal' ? 'The outgoing component leaves' : 'The incoming component is installed',
          ] as const,
        ]),
    ...(source === null ? [] : [['Data', `${source.document}, revision ${source.revision}`] as const]),
  ];
  if (facts.length === 0) return null;
  return <FactList className="procedure-around" facts={facts} />;
}

/** One step to be read: cautions before the action, then what it captures. */
export function StepPart(props: StepPartProps) {
  const { number, title, text, cautions, captures, inspection } = props.step;
  return (
    <li className="procedure-step" value={number}>
      <span className="procedure-number" aria-hidden="true">
        {number}
      </span>
      <div className="stack">
        {cautions.length > 0 && (
          <Notice kind="caution">
            {cautions.map((caution) => (
              <p key={caution}>{caution}</p>
            ))}
          </Notice>
        )}
        <div>
          <h3>
            <span className="visually-hidden">Step {number}: </span>
            {title}
          </h3>
          {text !== null && <p>{text}</p>}
        </div>
        {captures.length > 0 && (
          <ul className="plain-list procedure-captures">
            {captures.map((capture) => (
              <li key={capture.key}>
                <strong>{capture.label}</strong>
                {captureLines(capture).map((line) => (
                  <span key={line}>{line}</span>
                ))}
              </li>
            ))}
          </ul>
        )}
        {inspection === 'independent' && (
          <p>
            <StatusMark
              status="to-inspect"
              word="Hold point: another person inspects before the work goes on"
            />
          </p>
        )}
        <Around {...props} />
      </div>
    </li>
  );
}
