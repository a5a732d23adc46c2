import type {
  AccountableItem,
  ProcedureContent,
  StepDefinition,
  StepGroup,
} from '@strutbook/domain/work/step.js';
import type { Tx } from '../../platform/database/database.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { ADDED, addedGroup } from './own-steps.js';
import type { ProcedureFor } from './procedure-for.js';

/** What the steps of a package belong to and account for. */
export interface PackageParts {
  readonly groups: readonly StepGroup[];
  readonly items: readonly AccountableItem[];
}

/** A revision of a procedure as packages name it. */
export interface ProcedureOfPackage extends ProcedureFor {
  readonly id: string;
  readonly code: string;
  readonly revision: string;
  readonly title: string;
  readonly kind: string;
  readonly document: string;
  readonly documentRevision: string;
  readonly content: ProcedureContent;
}

/** A revision of a procedure with its content. Refuses: NOT_FOUND, about `procedureId`. */
export async function loadProcedure(
  tx: Tx,
  operatorId: number,
  procedureId: string,
): Promise<ProcedureOfPackage> {
  const where = { operatorId_id: { operatorId, id: procedureId } };
  const select = { id: true, designation: true } as const;
  const include = { airframeType: { select }, engineModel: { select } };
  const row = orNotFound(await tx.procedure.findUnique({ where, include }), 'procedure', 'procedureId');
  const { id, code, revision, title, kind, document, documentRevision, airframeType, engineModel, content } =
    row;
  return {
    id,
    code,
    revision,
    title,
    kind,
    document,
    documentRevision,
    airframeType,
    engineModel,
    content: JSON.parse(content) as ProcedureContent,
  };
}

/** Groups and things to account for of a package: its procedure's, and a group for what was added. Total. */
export function partsOf(
  procedure: ProcedureOfPackage | null,
  steps: readonly { readonly definition: StepDefinition }[],
): PackageParts {
  const { groups, items } = procedure?.content ?? { groups: [], items: [] };
  const added = steps.some(({ definition }) => definition.group === ADDED);
  return { groups: added ? [...groups, addedGroup(groups)] : groups, items };
}
