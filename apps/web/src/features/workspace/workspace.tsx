import { useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { Answered } from '../../ui/messages/answered.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { Accounting } from './accounts/accounting.js';
import { stepNamed } from './lanes/lane-parts.js';
import { Lanes } from './lanes/lanes.js';
import { StepSheets } from './paper/step-sheets.js';
import type { Who } from './signing/sign-draft.js';
import { SignSheet } from './signing/sign-sheet.js';
import { type Led, StepPanel } from './step/step-panel.js';
import { type Desk, DeskContext } from './work/use-desk.js';
import { workQuery } from './work/work-queries.js';
import type { Meaning, Work } from './work/work-shapes.js';
import { WorkSummary } from './work-summary.js';
import './workspace.css';

interface WorkspaceProps {
  readonly packageId: string;
  /** The step that is open, as the address names it: its id, key or number. */
  readonly step: string | undefined;
}

interface Signing {
  readonly id: string;
  readonly meaning: Meaning;
  readonly who: Who;
}

interface BenchProps extends WorkspaceProps {
  readonly work: Work;
}

/** Once signed, the button that led to the signature is gone: the focus goes to the row of its step. */
const toRow = (stepId: string): void => {
  requestAnimationFrame(() => {
    if (document.activeElement === document.body)
      document.querySelector<HTMLElement>(`[data-step-row="${stepId}"]`)?.focus({ preventScroll: true });
  });
};

function Bench({ packageId, work, step: named }: BenchProps) {
  const navigate = useNavigate();
  const [led, setLed] = useState<Led | null>(null);
  const [signing, setSigning] = useState<Signing | null>(null);
  const [held, setHeld] = useState<string | null>(null);
  const open = stepNamed(work.steps, named);
  const signed = work.steps.find(({ id }) => id === signing?.id) ?? null;
  const desk = useMemo<Desk>(
    () => ({
      work,
      onSign: ({ id }, meaning, who) => setSigning({ id, meaning, who }),
      held,
      onHold: setHeld,
      hrefOf: (stepId) => `/packages/${packageId}?step=${encodeURIComponent(stepId)}`,
    }),
    [work, packageId, held],
  );
  const show = (stepId: string | null) =>
    void navigate({
      to: '/packages/$packageId',
      params: { packageId },
      search: stepId === null ? {} : { step: stepId },
      replace: true,
      resetScroll: false,
    });
  const lead = (to: Led['to']) => (stepId: string) => {
    setLed((before) => ({ to, press: (before?.press ?? 0) + 1 }));
    show(stepId);
  };
  return (
    <DeskContext value={desk}>
      <div className="stack workspace no-print">
        <WorkSummary work={work} />
        <Lanes
          work={work}
          openId={open?.id ?? null}
          onOpen={(step) => {
            setLed(null);
            show(step?.id ?? null);
          }}
          panelOf={(step) => <StepPanel step={step} led={step.id === open?.id ? led : null} />}
          onReading={lead('reading')}
          onSign={lead('signature')}
        />
        <p className="quiet small keys-note">
          Keys in the list: arrows move between steps and lanes, Enter opens, R goes to the reading, S to the
          signature.
        </p>
        <Accounting />
      </div>
      <StepSheets work={work} />
      {signing !== null && signed !== null && (
        <SignSheet
          step={signed}
          meaning={signing.meaning}
          who={signing.who}
          onClose={() => {
            setSigning(null);
            toRow(signed.id);
          }}
        />
      )}
    </DeskContext>
  );
}

/** A package worked by steps: what is ordered, the lanes of steps, and what must be accounted for. */
export function Workspace({ packageId, step }: WorkspaceProps) {
  const query = useQuery(workQuery(packageId));
  return (
    <Answered query={query} doing="Reading the steps" lines={12}>
      {(work) =>
        work.steps.length === 0 ? (
          <EmptyState>This package has no steps yet.</EmptyState>
        ) : (
          <Bench {...{ packageId, work, step }} />
        )
      }
    </Answered>
  );
}
