import type { Judgement, StepEntry, Typed } from '@strutbook/domain/work/entry.js';
import { entryText, reasonText } from '@strutbook/domain/work/entry-words.js';
import type { StepDefinition } from '@strutbook/domain/work/step.js';
import type { Tx } from '../../platform/database/database.js';
import type { RecordedRow } from './tellable.js';

/** A package as its lines name it. */
export interface PackageName {
  readonly id: string;
  readonly number: string;
}

interface KeptEntry {
  readonly entry: StepEntry;
  readonly stepId: string;
  readonly enteredAt: Date;
  readonly recordedSeq: bigint;
  readonly voidedSeq: bigint | null;
  readonly voidReason: string | null;
}

interface NamedStep {
  readonly id: string;
  readonly packageId: string;
  readonly packageNumber: string;
  readonly definition: StepDefinition;
}

/**
 * The lines of the steps of these packages: each signature with what the step held when it was given, as typed, an undone
 * one struck; each entry that was not accepted, or was voided, at the time it was made.
 */
export async function stepLines(
  tx: Tx,
  operatorId: number,
  packages: readonly PackageName[],
): Promise<RecordedRow[]> {
  const where = { operatorId, packageId: { in: packages.map(({ id }) => id) } };
  const rows = await tx.workStep.findMany({ where, select: { id: true, packageId: true, definition: true } });
  const steps = new Map(
    rows.map(({ id, packageId, definition }): [string, NamedStep] => [
      id,
      {
        id,
        packageId,
        packageNumber: packages.find((work) => work.id === packageId)?.number ?? '',
        definition: JSON.parse(definition) as StepDefinition,
      },
    ]),
  );
  const entries = await keptEntries(tx, where);
  const signatures = await tx.stepSignature.findMany({ where, include: { signature: true } });
  return [
    ...signatures.flatMap((row) => {
      const step = steps.get(row.stepId);
      return step === undefined ? [] : signatureLine(row, step, heldAt(entries, row));
    }),
    ...entries.flatMap((kept) => {
      const step = steps.get(kept.stepId);
      const told = kept.entry.judgement.verdict === 'rejected' || kept.voidedSeq !== null;
      return step === undefined || !told ? [] : attemptLine(kept, step);
    }),
  ];
}

async function keptEntries(
  tx: Tx,
  where: { readonly operatorId: number; readonly packageId: { in: string[] } },
): Promise<KeptEntry[]> {
  const rows = await tx.stepEntry.findMany({
    where,
    include: { tool: { select: { serialNumber: true } } },
    orderBy: [{ recordedSeq: 'asc' }, { id: 'asc' }],
  });
  return rows.map(({ stepId, enteredAt, recordedSeq, voidedSeq, voidReason, ...row }) => ({
    ...{ stepId, enteredAt, recordedSeq, voidedSeq, voidReason },
    entry: {
      id: row.id,
      capture: row.capture,
      point: row.point,
      kind: row.kind as StepEntry['kind'],
      typed: JSON.parse(row.typed) as Typed,
      judgement: JSON.parse(row.judged) as Judgement,
      tool: row.tool?.serialNumber ?? null,
      personId: row.personId,
      personName: row.personName,
    },
  }));
}

/** What the step held when it was signed: what was entered before and not voided by then. */
function heldAt(
  entries: readonly KeptEntry[],
  { stepId, recordedSeq }: { readonly stepId: string; readonly recordedSeq: bigint },
): readonly StepEntry[] {
  return entries
    .filter(
      (kept) =>
        kept.stepId === stepId &&
        kept.recordedSeq < recordedSeq &&
        (kept.voidedSeq === null || kept.voidedSeq > recordedSeq),
    )
    .map(({ entry }) => entry);
}

interface SignatureRow {
  readonly id: string;
  readonly meaning: string;
  readonly performedAt: Date;
  readonly reinspectionReason: string | null;
  readonly recordedSeq: bigint;
  readonly voidedSeq: bigint | null;
  readonly voidReason: string | null;
  readonly signature: { readonly personName: string; readonly licence: string | null };
}

function signatureLine(
  {
    id,
    meaning,
    performedAt,
    reinspectionReason,
    recordedSeq,
    voidedSeq,
    voidReason,
    signature,
  }: SignatureRow,
  { id: stepId, packageId, packageNumber, definition }: NamedStep,
  held: readonly StepEntry[],
): RecordedRow {
  const inspected = meaning === 'inspection';
  const { personName, licence } = signature;
  return {
    id,
    at: performedAt,
    recordedSeq,
    voidedSeq,
    voidReason: voidReason === null ? null : `Signature undone: ${voidReason}`,
    title: inspected ? 'Step inspected' : 'Step signed',
    detail: [
      `Package ${packageNumber}, step ${definition.number}: ${definition.title}`,
      // The inspection is on the same content; it is told once, with the work.
      ...(inspected ? [] : held.map((entry) => entryLine(definition, entry))),
      `${inspected ? 'inspected' : 'signed'} by ${personName}${licence === null ? '' : `, licence ${licence}`}`,
      ...(reinspectionReason === null ? [] : [`own work, inspected again: ${reinspectionReason}`]),
    ].join('; '),
    event: { kind: 'work', what: inspected ? 'inspected' : 'signed', package: packageNumber },
    work: { packageId, number: packageNumber, stepId },
  };
}

function attemptLine(
  { entry, enteredAt, recordedSeq, voidedSeq, voidReason }: KeptEntry,
  { id: stepId, packageId, packageNumber, definition }: NamedStep,
): RecordedRow {
  const rejected = entry.judgement.verdict === 'rejected';
  return {
    id: entry.id,
    at: enteredAt,
    recordedSeq,
    voidedSeq,
    voidReason,
    title: rejected ? 'Attempt not accepted' : 'Entry taken back',
    detail: [
      `Package ${packageNumber}, step ${definition.number}: ${definition.title}`,
      entryLine(definition, entry),
      ...entry.judgement.reasons.map(reasonText),
    ].join('; '),
    event: { kind: 'work', what: 'attempt', package: packageNumber },
    work: { packageId, number: packageNumber, stepId },
  };
}

function entryLine(definition: StepDefinition, entry: StepEntry): string {
  return entryText(definition.captures.find(({ key }) => key === entry.capture) ?? null, entry);
}
