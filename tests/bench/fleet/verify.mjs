import assert from 'node:assert/strict';
import { idOf } from '../ids.mjs';
import { ACTOR } from '../open-app.mjs';

const dist = '../../../apps/api/dist/records/';
const SAMPLE = 400;

/** The product's own verification of what the filling wrote: all clocks and chains, and a sample of parts and engines. */
export async function assertProjections(app, told) {
  const { verifyClocks } = await import(`${dist}verification/clocks.js`);
  const { verifyDuePoints, verifyExposures } = await import(`${dist}verification/projections.js`);
  const { verifyChains } = await import(`${dist}verification/chains.js`);
  const database = await app.find('platform/database/database.js', 'Database');
  const exposures = await app.find('records/usage/exposures.js', 'Exposures');
  const duePoints = await app.find('records/due-points/due-points.js', 'DuePoints');
  const patience = { statementMs: 300_000, wholeMs: 300_000 };
  const verdicts = await database.inOperator(
    ACTOR,
    async (tx) => {
      const sample = await tx.component.findMany({
        select: { id: true },
        orderBy: { id: 'asc' },
        take: SAMPLE,
      });
      const engines = [1, 2].map((position) => idOf(`e${idOf(`p1.${position}`)}`));
      const ids = [...sample.map((row) => row.id), ...engines];
      return [
        await verifyClocks(tx, 1),
        await verifyChains(tx, 1),
        await verifyExposures(tx, 1, exposures, ids),
        await verifyDuePoints(tx, 1, duePoints, { componentIds: ids, airframeIds: [] }),
      ];
    },
    patience,
  );
  for (const { name, looked, differences } of verdicts) {
    assert.deepEqual(differences.slice(0, 3), [], name);
    told(`  as the facts say: ${looked} of ${name}`);
  }
}
