import type { TorqueCapture } from '@strutbook/domain/work/capture.js';
import { StatusShape } from '../../../ui/status/status-shape.js';
import { lastEntry, pointStanding } from '../captures/capture-entries.js';
import type { Step } from '../work/work-shapes.js';
import { BoltPicture } from './bolt-picture.js';

const LOOKS = {
  accepted: { status: 'signed', word: 'accepted' },
  rejected: { status: 'rejected', word: 'rejected' },
  missing: { status: 'open', word: 'to do' },
} as const;

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
          const { status, word } = LOOKS[pointStanding(step, capture, name)];
          return (
            <button
              key={name}
              type="button"
              className="point"
              aria-pressed={name === point}
              onClick={() => onChoose(name)}
            >
              <StatusShape status={status} />
              <span>
                {name} {word}
              </span>
              <span className="point-value">
                {lastEntry(step, capture, name)?.judgement.computed['atFastener'] ?? ''}
              </span>
            </button>
          );
        })}
      </fieldset>
    </div>
  );
}
