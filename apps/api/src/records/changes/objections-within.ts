import { checkRelease } from '@strutbook/domain/release/check-release.js';
import type { Objection } from '@strutbook/domain/release/objection.js';
import { NOTHING_ELSE } from '@strutbook/domain/release/snapshot.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import type { EngineSnapshots } from '../lives/engine-snapshots.js';
import type { Structure } from '../stays/structure.js';

/**
 * What is held, at an instant, against a component that is in another one by then, and against what is in it: its
 * limited parts are judged by the engine they now hang in, at the rating that engine runs at.
 */
export async function objectionsWithin(
  tx: Tx,
  operatorId: number,
  {
    componentId,
    parentId,
    at,
  }: { readonly componentId: string; readonly parentId: string; readonly at: Date },
  { structure, engines }: { readonly structure: Structure; readonly engines: EngineSnapshots },
): Promise<readonly Objection[]> {
  const within = await structure.beneath(tx, operatorId, [componentId], at);
  const engineId = (await structure.engineOf(tx, operatorId, [componentId], at)).get(componentId);
  const rootId = engineId ?? parentId;
  const snapshot = (await engines.of(tx, operatorId, [rootId], at)).get(rootId);
  if (snapshot === undefined) return [];
  const looked = { id: '', kind: 'component-change', airframeId: null, registration: null, ruleSet: '' };
  const objections = checkRelease({
    ...NOTHING_ELSE,
    package: looked,
    at: toInstant(at),
    positions: [],
    component: { kind: 'module', as: snapshot },
  });
  const own = new Set([componentId, ...within.flatMap((slot) => [slot.slotId, slot.componentId])]);
  return objections.filter((objection) => own.has(objection.record.id));
}
