import { ruleSetOn } from '@strutbook/domain/release/rule-sets.js';
import { dateOf } from '@strutbook/domain/units/calendar.js';
import type { StepDefinition } from '@strutbook/domain/work/step.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { airframeAbove } from '../../records/stays/airframe-above.js';
import { ownDefinitions, stepsOfOrder } from '../../records/work/own-steps.js';
import { loadProcedure } from '../../records/work/package-parts.js';
import { refuseOtherProcedure, type WorkedOn } from '../../records/work/procedure-for.js';
import { type ResolvedOrder, resolveOrder } from '../../records/work/resolve-order.js';
import type { NewPackageDto } from './new-package.dto.js';
import { refuseMovesUnlikeOrder, refuseShape } from './package-shape.js';

/** A package as it will be written. */
export interface PlannedPackage {
  readonly airframeId: string | null;
  readonly componentId: string | null;
  /** The rule set of a component's package; null for an airframe's, which has its own. */
  readonly ruleSet: string | null;
  readonly order: ResolvedOrder | null;
  readonly definitions: readonly StepDefinition[];
}

/** Finds everything a package to be opened names, and makes its steps. Refuses: INVALID_FIELDS, NOT_FOUND, REFUSED_BY_FACTS, and as resolveOrder does. */
export async function planPackage(
  tx: Tx,
  operatorId: number,
  asked: NewPackageDto,
  now: Date,
): Promise<PlannedPackage> {
  refuseShape(asked);
  const { kind, airframeId = null, componentId = null } = asked;
  if (airframeId !== null)
    orNotFound(
      await tx.airframe.findUnique({ where: { operatorId_id: { operatorId, id: airframeId } } }),
      'airframe',
      'airframeId',
    );
  const ruleSet =
    componentId === null ? null : await ruleSetOf(tx, operatorId, { ...asked, componentId }, now);
  const order =
    asked.order === undefined
      ? null
      : await resolveOrder(tx, operatorId, asked.order, {
          kind,
          airframeId,
          componentId,
          now: toInstant(now),
        });
  const orderedId =
    order?.slotKind === 'engine' || order?.slotKind === 'apu'
      ? (order.incoming?.id ?? order.outgoing?.id ?? null)
      : null;
  const on = { airframeId, componentId, orderedId };
  const definitions = await definitionsOf(tx, operatorId, asked, { order, on });
  refuseMovesUnlikeOrder(definitions, order, asked.procedureId === undefined ? 'steps' : 'procedureId');
  return { airframeId, componentId, ruleSet, order, definitions };
}

/** The steps of the procedure and the own ones after them; without a procedure, those that make the order come first. */
async function definitionsOf(
  tx: Tx,
  operatorId: number,
  { kind, procedureId, steps: own = [] }: NewPackageDto,
  { order, on }: { readonly order: ResolvedOrder | null; readonly on: WorkedOn },
): Promise<StepDefinition[]> {
  if (procedureId === undefined) {
    const moved = own.some((step) => step.moves != null);
    const making = order === null || moved ? [] : stepsOfOrder(order);
    return ownDefinitions([...making, ...own], { number: 0, own: 0 });
  }
  const procedure = await loadProcedure(tx, operatorId, procedureId);
  if (procedure.kind !== kind)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'procedureId',
      reason: `Procedure ${procedure.code} revision ${procedure.revision} is for another kind of work.`,
      fix: 'Choose a procedure of the kind of this package.',
    });
  await refuseOtherProcedure(tx, operatorId, procedure, on);
  const { steps } = procedure.content;
  return [...steps, ...ownDefinitions(own, { number: steps.length, own: 0 })];
}

/** The rule set a component's package is released under: its airframe's while it hangs on one, else the one named. */
async function ruleSetOf(
  tx: Tx,
  operatorId: number,
  { componentId, ruleSet }: Pick<NewPackageDto, 'ruleSet'> & { readonly componentId: string },
  now: Date,
): Promise<string> {
  const where = { operatorId_id: { operatorId, id: componentId } };
  orNotFound(await tx.component.findUnique({ where, select: { id: true } }), 'component', 'componentId');
  const hangsOn = await airframeAbove(tx, operatorId, componentId);
  if (hangsOn !== null) return hangsOn.ruleSet;
  if (ruleSet === undefined || ruleSetOn(ruleSet, dateOf(toInstant(now))) === null)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'ruleSet',
          reason:
            ruleSet === undefined
              ? 'The component hangs on no airframe whose rule set would hold.'
              : `There is no rule set ${ruleSet} in force.`,
          fix: 'Choose the rule set it is released under.',
        },
      ],
    });
  return ruleSet;
}
