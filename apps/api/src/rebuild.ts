import { eachOperator } from './each-operator.js';
import type { Tx } from './platform/database/database.js';
import { Clock } from './platform/time/clock.js';
import { DuePoints } from './records/due-points/due-points.js';
import { Lives } from './records/lives/lives.js';
import { RequirementPoints } from './records/requirements/requirement-points.js';
import { Standings } from './records/requirements/standings.js';
import { Structure } from './records/stays/structure.js';
import { Counters } from './records/usage/counters.js';
import { Exposures } from './records/usage/exposures.js';
import { Use } from './records/usage/use.js';
import { verifyChains } from './records/verification/chains.js';
import { verifyClocks } from './records/verification/clocks.js';
import type { Verdict } from './records/verification/difference.js';
import { verifyDuePoints, verifyExposures } from './records/verification/projections.js';

const COMPONENTS_AT_ONCE = 500;
const SHOWN = 20;

const exposures = new Exposures();
const use = new Use();
const structure = new Structure();
const clock = new Clock();
const counters = new Counters(use);
const duePoints = new DuePoints(
  new Lives(use, structure, clock),
  use,
  counters,
  new RequirementPoints(new Standings(structure, use, counters, clock), structure),
);

/**
 * Computes every projection again from the facts and compares it with what is kept: months and heads of the clocks,
 * exposures, due points; and checks the chains of the journal. Writes nothing. Ends with 1 when something differs.
 */
await eachOperator(async (tx, { id, code }) => {
  console.log(`Projections of ${code}`);
  const verdicts = [
    await verifyClocks(tx, id),
    ...(await verifyComponents(tx, id)),
    await verifyAirframes(tx, id),
    await verifyChains(tx, id),
  ];
  for (const { name, looked, differences } of verdicts) {
    console.log(
      `  ${name}: ${looked} looked at, ${differences.length === 0 ? 'all as the facts say' : `${differences.length} differ`}`,
    );
    for (const { what, id: of, kept, fromFacts } of differences.slice(0, SHOWN))
      console.log(`    ${what} of ${of}: kept ${kept}, from the facts ${fromFacts}`);
  }
  return verdicts.every((verdict) => verdict.differences.length === 0);
});

async function verifyAirframes(tx: Tx, operatorId: number): Promise<Verdict> {
  const airframes = await tx.airframe.findMany({ where: { operatorId }, select: { id: true } });
  const airframeIds = airframes.map((airframe) => airframe.id);
  const verdict = await verifyDuePoints(tx, operatorId, duePoints, { componentIds: [], airframeIds });
  return { ...verdict, name: 'due points of airframes and positions' };
}

async function verifyComponents(tx: Tx, operatorId: number): Promise<Verdict[]> {
  const components = await tx.component.findMany({
    where: { operatorId },
    select: { id: true },
    orderBy: { id: 'asc' },
  });
  const totals = new Map<string, Verdict>();
  for (let from = 0; from < components.length; from += COMPONENTS_AT_ONCE) {
    const ids = components.slice(from, from + COMPONENTS_AT_ONCE).map((component) => component.id);
    for (const verdict of [
      await verifyExposures(tx, operatorId, exposures, ids),
      await verifyDuePoints(tx, operatorId, duePoints, { componentIds: ids, airframeIds: [] }),
    ]) {
      const before = totals.get(verdict.name);
      totals.set(verdict.name, {
        name: verdict.name,
        looked: verdict.looked + (before?.looked ?? 0),
        differences: [...(before?.differences ?? []), ...verdict.differences],
      });
    }
  }
  return [...totals.values()];
}
