import { lazy, Suspense, useState } from 'react';
import { useMay } from '../../server/authority.js';
import { hasSteps, type WorkPackage } from '../../server/work.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';

const AmendDialog = lazy(() =>
  import('./order/amend-dialog.js').then((module) => ({ default: module.AmendDialog })),
);
const WithdrawDialog = lazy(() =>
  import('./withdraw-dialog.js').then((module) => ({ default: module.WithdrawDialog })),
);
const AddStepDialog = lazy(() =>
  import('./add-step-dialog.js').then((module) => ({ default: module.AddStepDialog })),
);

type Asked = 'amend' | 'withdraw' | 'add-step';

interface PackageActionsProps {
  readonly work: WorkPackage;
  /** Whether the way to the release stands out: elsewhere the next step does. */
  readonly releaseFirst?: boolean;
}

/** The acts on a package as a whole: for an open one only, and only those its reader may do. */
export function PackageActions({ work, releaseFirst = false }: PackageActionsProps) {
  const [asked, setAsked] = useState<Asked | null>(null);
  const mayAmend = useMay('amend-an-order');
  const mayAdd = useMay('add-a-step');
  const mayWithdraw = useMay('withdraw-a-package');
  const moved = work.changes.length > 0;
  const { order } = work;
  const close = () => setAsked(null);
  if (work.status !== 'open') return null;
  return (
    <>
      <ActionLink kind={releaseFirst ? 'primary' : 'secondary'} href={`/packages/${work.id}/release-check`}>
        Release check
      </ActionLink>
      {mayAdd && hasSteps(work) && <Button onClick={() => setAsked('add-step')}>Add a step</Button>}
      {mayAmend && order !== null && <Button onClick={() => setAsked('amend')}>Amend the order</Button>}
      {mayWithdraw && !moved && <Button onClick={() => setAsked('withdraw')}>Withdraw</Button>}
      <Suspense fallback={null}>
        {asked === 'amend' && order !== null && <AmendDialog work={work} order={order} onClose={close} />}
        {asked === 'withdraw' && <WithdrawDialog work={work} onClose={close} />}
        {asked === 'add-step' && <AddStepDialog work={work} onClose={close} />}
      </Suspense>
    </>
  );
}
