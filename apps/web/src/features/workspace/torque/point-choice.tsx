import type { TorqueCapture } from '@strutbook/domain/work/capture.js';
import { StatusShape } from '../../../ui/status/status-shape.js';
import { isAccepted, lastEntry } from '../captures/capture-entries.js';
import type { Step } from '../work/work-shapes.js';
import { BoltPicture } from './bolt-picture.js';

interface PointChoiceProps {
  readonly step: Step;
  readonly capture: TorqueCapture;
  readonly point: string;
  readonly onChoose: (point: string) => void;
}

/** The bolts in their order, with what each is at. */
export function PointChoice({ step, capture, point, onChoose }: PointChoiceProps) {
  if (capture.points.length < 2) return null;
  return (
    <div className="points">
      <BoltPicture {...{ step, capture, point }} />
      <fieldset className="point-list">
        <legend>In this order</legend>
        {capture.points.map((name) => {
          const last = lastEntry(step, capture, name);
          const done = isAccepted(last);
          const words = last === null ? 'to do' : done ? 'accepted' : 'rejected';
          return (
            <button
              key={name}
              type="button"
              className="point"
              aria-pressed={name === point}
              onClick={() => onChoose(name)}
            >
              <StatusShape status={last === null ? 'open' : done ? 'signed' : 'rejected'} />
              <span>
                {name} {words}
              </span>
              <span className="point-value">{last?.judgement.computed['atFastener'] ?? ''}</span>
            </button>
          );
        })}
      </fieldset>
    </div>
  );
}
