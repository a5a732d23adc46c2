import { type ReactNode, useEffect, useState } from 'react';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { PodPicture } from '../picture/pod-picture.js';
import type { Step } from '../work/work-shapes.js';
import { type Group, signedOf } from './lane-parts.js';
import { groupStanding } from './standing.js';
import { StepRow } from './step-row.js';

interface GroupPartProps {
  readonly group: Group;
  readonly openId: string | null;
  readonly onOpen: (step: Step | null) => void;
  readonly panelOf: (step: Step) => ReactNode;
}

/** A group of steps: its letter, where on the pod it is, how much of it is signed, and its steps. */
export function GroupPart({ group, openId, onOpen, panelOf }: GroupPartProps) {
  const { key, letter, title, place, steps } = group;
  const { signed, total } = signedOf([group]);
  const holdsOpen = steps.some(({ id }) => id === openId);
  const [unfolded, setUnfolded] = useState(signed < total || holdsOpen);
  useEffect(() => {
    if (holdsOpen) setUnfolded(true);
  }, [holdsOpen]);
  const bodyId = `group-${key === '' ? 'added' : key}`;
  return (
    <section className="group" aria-label={`${letter} ${title}`}>
      <h3 className="group-head">
        <button
          type="button"
          className="group-toggle"
          aria-expanded={unfolded}
          aria-controls={bodyId}
          onClick={() => setUnfolded(!unfolded)}
        >
          <svg className="group-fold" width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
            <path d={unfolded ? 'M1 3.5l5 5 5-5' : 'M3.5 1l5 5-5 5'} />
          </svg>
          <span className="group-letter">{letter}</span>
          <span className="group-title">{title}</span>
          <span className="group-count">
            {signed}/{total}
          </span>
          <StatusMark status={groupStanding(steps)} />
        </button>
      </h3>
      <div id={bodyId} hidden={!unfolded}>
        <PodPicture place={place} />
        <ol className="plain-list steps">
          {steps.map((step) => (
            <StepRow
              key={step.id}
              step={step}
              open={step.id === openId}
              onToggle={() => onOpen(step.id === openId ? null : step)}
            >
              {panelOf(step)}
            </StepRow>
          ))}
        </ol>
      </div>
    </section>
  );
}
