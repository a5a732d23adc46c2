import type { Judgement, Typed } from '../../../libs/domain/src/work/entry.js';
import type { ProcedureContent, StepDefinition } from '../../../libs/domain/src/work/step.js';
import type { Answer, HttpClient } from '../http-client.js';
import { dateAt } from '../scenario/instants.js';
import { done } from '../scenario/problem.js';
import { smallProcedure } from './small-procedure.js';

export interface ShownEntry {
  readonly id: string;
  readonly capture: string;
  readonly point: string | null;
  readonly typed: Typed;
  readonly judgement: Judgement;
  readonly tool: string | null;
  readonly photoId: string | null;
  readonly personName: string;
  readonly voided: boolean;
  readonly voidReason: string | null;
}

export interface ShownStep {
  readonly id: string;
  readonly version: number;
  readonly contentHash: string;
  readonly standing: string;
  readonly blockers: readonly { readonly code: string; readonly number: number }[];
  readonly missing: readonly {
    readonly code: string;
    readonly capture: string;
    readonly point: string | null;
  }[];
  readonly definition: StepDefinition;
  readonly entries: readonly ShownEntry[];
  readonly signatures: readonly {
    readonly id: string;
    readonly meaning: string;
    readonly personName: string;
    readonly undone: boolean;
    readonly counts: boolean;
  }[];
}

export interface ShownPackage {
  readonly id: string;
  readonly number: string;
  readonly kind: string;
  readonly status: string;
  readonly version: number;
  readonly ruleSet: string;
  readonly place: string | null;
  readonly reference: string | null;
  readonly steps: { readonly signed: number; readonly total: number };
  readonly procedure: { readonly code: string; readonly revision: string } | null;
  readonly requirements: readonly { readonly requirementId: string }[];
  readonly withdrawal: { readonly person: string; readonly reason: string } | null;
  readonly order: {
    readonly slot: string;
    readonly positionNumber: number | null;
    readonly outgoing: { readonly serialNumber: string; readonly place: string } | null;
    readonly incoming: { readonly serialNumber: string; readonly place: string } | null;
    readonly removedToLocation: string | null;
  } | null;
}

export interface ShownWork {
  readonly package: { readonly id: string; readonly number: string; readonly status: string };
  readonly groups: readonly { readonly key: string; readonly letter: string }[];
  readonly counts: readonly {
    readonly what: string;
    readonly out: number | null;
    readonly in: number | null;
  }[];
  readonly openItems: readonly { readonly item: { readonly key: string } }[];
  readonly steps: readonly ShownStep[];
}

/** A change to be ordered at a position. */
export interface ChangeToOrder {
  readonly airframeId: string;
  readonly positionNumber: number;
  readonly outgoingSerial: string | null;
  readonly incomingSerial: string | null;
  readonly procedureId: string;
}

/** Records a revision of a procedure: the small one for engine changes unless told. */
export async function recordProcedure(
  client: HttpClient,
  {
    code = 'K1-71-EC',
    revision = '1',
    kind = 'engine-change',
    content = smallProcedure(),
    madeFor = {},
  }: {
    readonly code?: string;
    readonly revision?: string;
    readonly kind?: string;
    readonly content?: ProcedureContent;
    readonly madeFor?: { readonly airframeType?: string; readonly engineModel?: string };
  } = {},
): Promise<string> {
  const words = { title: `Procedure ${code}`, document: 'K1 maintenance manual', documentRevision: '7' };
  const { id } = done(
    await client.post<{ readonly id: string }>('/api/procedures', {
      code,
      revision,
      kind,
      content,
      ...words,
      ...madeFor,
    }),
  );
  return id;
}

/** A torque wrench from 20 to 200 N·m, calibrated for ten years from 2025-01-01 on. */
export async function registerWrench(client: HttpClient, serialNumber = 'TW-014'): Promise<string> {
  const { id } = done(
    await client.post<{ readonly id: string }>('/api/tools', {
      serialNumber,
      description: 'Torque wrench',
      kind: 'torque-wrench',
      unit: 'N·m',
      rangeLow: '20',
      rangeHigh: '200',
      deviation: '4',
    }),
  );
  done(
    await client.post(`/api/tools/${id}/calibrations`, {
      calibratedOn: dateAt(0),
      dueOn: dateAt(10 * 365),
      certificate: 'C-1',
    }),
  );
  return id;
}

/** Opens an engine change at a position, worked by the steps of a procedure. Answers the refusal too. */
export function openEngineChange(client: HttpClient, change: ChangeToOrder): Promise<Answer<ShownPackage>> {
  const { airframeId, procedureId, ...order } = change;
  return client.post('/api/packages', {
    kind: 'engine-change',
    title: `Engine change at position ${change.positionNumber}`,
    reference: 'WO-4711',
    airframeId,
    procedureId,
    order: {
      ...order,
      slot: 'engine',
      reason: 'Planned',
      ...(change.outgoingSerial === null ? {} : { removedToLocation: 'Store' }),
    },
  });
}

/** The steps of a package as they stand. */
export async function workOf(client: HttpClient, packageId: string): Promise<ShownWork> {
  return done(await client.get<ShownWork>(`/api/packages/${packageId}/steps`));
}

/** The step of that key. Throws when there is none. */
export function stepOf({ steps }: ShownWork, key: string): ShownStep {
  const step = steps.find(({ definition }) => definition.key === key);
  if (step === undefined) throw new Error(`no step ${key}`);
  return step;
}

/** Enters what was typed for a capture of a step. */
export function capture(
  client: HttpClient,
  stepId: string,
  words: { readonly capture: string; readonly typed: Typed | object; readonly toolId?: string },
): Promise<Answer<ShownStep>> {
  return client.post(`/api/steps/${stepId}/entries`, words);
}

/** A torque as typed at a point, in N·m, by the setting of a wrench. */
export const torque = (point: string, indication: string): Typed => ({
  kind: 'torque',
  point,
  indication,
  unit: 'N·m',
  method: 'set-value',
  runOn: null,
  extension: null,
});

/** What the captures of the small procedure accept. */
export interface GoodEntries {
  readonly outgoingSerial: string;
  readonly incomingSerial: string;
  readonly positionNumber: string;
  readonly toolId: string;
}

/** Enters what is accepted for every capture of a step that is not captured yet. Answers the step as it then stands. */
export async function captureAll(client: HttpClient, step: ShownStep, good: GoodEntries): Promise<ShownStep> {
  let now = step;
  for (const { capture: key, point } of step.missing) {
    const asked = step.definition.captures.find((each) => each.key === key);
    const typed = acceptedFor(asked?.kind ?? '', point, good);
    const toolId = asked?.kind === 'torque' ? { toolId: good.toolId } : {};
    now = done(await capture(client, step.id, { capture: key, typed, ...toolId }));
  }
  return now;
}

function acceptedFor(kind: string, point: string | null, good: GoodEntries): Typed {
  const { outgoingSerial, incomingSerial, positionNumber } = good;
  switch (kind) {
    case 'torque':
      return torque(point ?? '', '110.0');
    case 'component-off':
      return { kind, serialNumber: outgoingSerial, partNumber: null, positionNumber };
    case 'component-on':
      return { kind, serialNumber: incomingSerial, partNumber: null, positionNumber };
    case 'papers':
      return {
        kind,
        plateSerial: incomingSerial,
        documentSerial: incomingSerial,
        documentNumber: 'F1-0815',
        tag: 'serviceable',
      };
    case 'leak-check':
      return { kind, minutes: '6', power: 'idle', found: 'none' };
    case 'check':
      return { kind, seen: true };
    case 'text':
      return { kind, text: 'As asked' };
    default:
      return { kind: 'count', number: '2' };
  }
}
