// The packages that are worked by steps, in the order they are loaded.
import { procedures } from '../procedures/procedures.mjs';
import { engineChangeInWork } from './engine-change.mjs';
import { podSwapWorked } from './pod-swap.mjs';
import { standingOf } from './script.mjs';

/** Just opened: nothing is signed. */
const inspectionOpened = {
  reference: 'W-7358',
  procedure: 'R63-72-BI',
  openedBy: 'pim.haldorey',
  open: {
    kind: 'inspection',
    title: 'Borescope inspection, high-pressure turbine, RV-217 at position 1',
    registration: 'ZZ-739',
    requirements: [{ code: 'R63-72-14', serialNumber: 'RV-217' }],
  },
  acts: [],
};

export const packages = [podSwapWorked, engineChangeInWork, inspectionOpened];

/** The packages as the loader takes them. */
export function workFile() {
  return packages.map(({ own, ...each }) => ({
    ...each,
    acts: each.acts.map(({ rejected, ...act }) => act),
  }));
}

/** The requirements that a release met. */
export function closedRequirements() {
  return packages
    .filter(({ acts }) => acts.some(({ act }) => act === 'release'))
    .flatMap(({ open }) => open.requirements);
}

/** What the system must say of each. */
export function expectedPackages() {
  return packages.map(({ reference, procedure, own, open, acts }) => {
    const { content } = procedures.find(({ code }) => code === procedure);
    const released = acts.some(({ act }) => act === 'release');
    return {
      reference,
      kind: open.kind,
      registration: open.registration,
      status: released ? 'released' : 'open',
      ...standingOf({ content, own, acts }),
    };
  });
}
