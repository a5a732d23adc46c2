import { governingCalibration } from '../../tools/calibration.js';
import type { EntryReason, EntryReasonCode, StepEntry } from '../../work/entry.js';
import { reasonText } from '../../work/entry-words.js';
import { isSameNumber } from '../../work/judge-identity.js';
import type { StepFacts } from '../../work/step-standing.js';
import type { Objection, WorkObjectionCode } from '../objection.js';
import type { ToolUse, WorkSnapshot } from '../work-snapshot.js';
import { heldAgainstStep } from './held-against-step.js';

/**
 * What is held against what was captured in a step. Of each capture, and each point of one, the last entry decides; the
 * attempts before it stay on record and hold nothing up. Total.
 */
export function objectionsToEntries(
  step: StepFacts,
  { toolUses, orders }: Pick<WorkSnapshot, 'toolUses' | 'orders'>,
): readonly Objection[] {
  return lastEntries(step.entries).flatMap((entry) => {
    const use = toolUses.find((each) => each.entryId === entry.id);
    return [
      ...rejections(step, entry, use),
      ...(isMeasured(entry) && use !== undefined ? objectionsToTool(step, entry, use) : []),
      ...objectionsToSerial(step, entry, orders),
    ];
  });
}

function lastEntries(entries: readonly StepEntry[]): readonly StepEntry[] {
  const last = new Map<string, StepEntry>();
  for (const entry of entries) last.set(JSON.stringify([entry.capture, entry.point]), entry);
  return [...last.values()];
}

function rejections(step: StepFacts, entry: StepEntry, use: ToolUse | undefined): readonly Objection[] {
  if (entry.judgement.verdict === 'accepted') return [];
  const codes = new Map<WorkObjectionCode, EntryReason[]>();
  for (const reason of entry.judgement.reasons) {
    const code = codeOf(entry.kind, reason.code);
    codes.set(code, [...(codes.get(code) ?? []), reason]);
  }
  if (codes.size === 0) codes.set('ENTRY_REJECTED', []);
  return [...codes].map(([code, reasons]) =>
    heldAgainstStep(step, code, {
      detail: {
        label: labelOf(step, entry),
        point: entry.point,
        tool: entry.tool,
        why: reasons.map(reasonText).join(' ') || 'It was not accepted.',
      },
      ...(code === 'TOOL_NOT_USABLE' && use !== undefined
        ? { record: { kind: 'tool', id: use.toolId } }
        : {}),
    }),
  );
}

function codeOf(kind: StepEntry['kind'], reason: EntryReasonCode): WorkObjectionCode {
  if (reason.startsWith('TOOL_')) return 'TOOL_NOT_USABLE';
  if (kind === 'torque') return 'TORQUE_OUT_OF_RANGE';
  if (kind === 'papers') return 'PAPERS_REJECTED';
  if (kind === 'component-off' || kind === 'component-on') return 'ORDER_DIFFERS';
  if (kind !== 'leak-check') return 'ENTRY_REJECTED';
  return reason === 'LEAK_FOUND' ? 'LEAK_FOUND' : 'LEAK_CHECK_INCOMPLETE';
}

/** What is captured by a tool: the torque of a wrench, the readings of a gauge. */
function isMeasured({ kind }: StepEntry): boolean {
  return kind === 'torque' || kind === 'readings';
}

/** A calibration may have been voided or recorded since the tool was used: then what it measured no longer stands. */
function objectionsToTool(step: StepFacts, entry: StepEntry, use: ToolUse): readonly Objection[] {
  const told = entry.judgement.reasons.some(({ code }) => code.startsWith('TOOL_'));
  const governing = governingCalibration(use.calibrations, use.on);
  if (told || (governing !== null && use.on <= governing.dueOn)) return [];
  return [
    heldAgainstStep(step, 'TOOL_NOT_USABLE', {
      record: { kind: 'tool', id: use.toolId },
      detail: {
        label: labelOf(step, entry),
        point: entry.point,
        tool: use.serial,
        why: `No calibration that stands covers ${use.on}, when it was used.`,
      },
    }),
  ];
}

/** An order may have been amended after the plate was read: then the plate differs from it. */
function objectionsToSerial(
  step: StepFacts,
  { typed, judgement }: StepEntry,
  orders: WorkSnapshot['orders'],
): readonly Objection[] {
  if (typed.kind !== 'component-off' && typed.kind !== 'component-on') return [];
  if (judgement.verdict === 'rejected' || orders.length === 0) return [];
  const ordered = orders.flatMap(
    (order) => (typed.kind === 'component-off' ? order.outgoing : order.incoming)?.serial ?? [],
  );
  if (ordered.some((serial) => isSameNumber(serial, typed.serialNumber))) return [];
  return [
    heldAgainstStep(step, 'ORDER_DIFFERS', {
      detail: {
        why: `Serial ${typed.serialNumber.trim()} was read there; the order says ${ordered.join(' or ') || 'none'}.`,
      },
    }),
  ];
}

function labelOf({ definition }: StepFacts, { capture }: StepEntry): string {
  return definition.captures.find(({ key }) => key === capture)?.label ?? capture;
}
