import { judgeTorque } from '../torque/judge-torque.js';
import { calibrationReasons, type ToolFacts } from '../torque/tool-fitness.js';
import type { CalendarDate } from '../units/calendar.js';
import type { Capture } from './capture.js';
import type { EntryReason, Judgement, StepEntry, Typed } from './entry.js';
import { judgeComponent, judgePapers, type OrderedFacts, type RegisterFacts } from './judge-identity.js';
import { judgeLeakCheck, judgeReadings } from './judge-run.js';
import { judgement } from './judgement.js';
import { lastEntry } from './step-standing.js';

export type { OrderedFacts, RegisterFacts } from './judge-identity.js';

/** What an entry is judged against besides its capture. */
export interface EntryFacts {
  /** The tool named; null where none was. */
  readonly tool: ToolFacts | null;
  /** Entries of this step that are not voided, in the order recorded. */
  readonly entries: readonly StepEntry[];
  /** The day of use. */
  readonly on: CalendarDate;
  /** What the order says; null where the package has none. */
  readonly ordered: OrderedFacts | null;
  /** What the register has for the serial typed; null where it has none. */
  readonly register: RegisterFacts | null;
}

/**
 * Judges what was typed for a capture: accepted, or rejected with every reason. Rejected entries are kept as
 * attempts; they cannot be signed.
 *
 * Throws when the kinds differ, and when the capture's own figures are no numbers: neither is let in.
 */
export function judgeEntry(capture: Capture, typed: Typed, facts: EntryFacts): Judgement {
  if (capture.kind === 'torque' && typed.kind === 'torque')
    return judgeTorque(
      capture,
      typed,
      facts.tool,
      acceptedPoints(capture.key, capture.points, facts),
      facts.on,
    );
  if (capture.kind !== typed.kind) throw new RangeError(`a ${typed.kind} typed for a ${capture.kind}`);
  return judgeOther(capture, typed, facts);
}

function judgeOther(capture: Capture, typed: Typed, facts: EntryFacts): Judgement {
  switch (typed.kind) {
    case 'component-off':
    case 'component-on':
      return judgeComponent(typed, facts);
    case 'papers':
      return judgePapers(typed, facts.ordered);
    case 'leak-check':
      return judgement(capture.kind === 'leak-check' ? judgeLeakCheck(capture, typed) : []);
    case 'readings':
      return judgement([
        ...(capture.kind === 'readings' ? judgeReadings(capture, typed.values) : []),
        ...(facts.tool === null ? [] : calibrationReasons(facts.tool, facts.on)),
      ]);
    default:
      return judgement(plainReasons(capture, typed));
  }
}

/** A count is a whole number; a text that is asked for is there; a condition was seen; a picture is one. */
function plainReasons(capture: Capture, typed: Typed): EntryReason[] {
  switch (typed.kind) {
    case 'count':
      if (/^\d{1,6}$/.test(typed.number.trim())) return [];
      return [
        {
          code: 'NOT_A_NUMBER',
          detail: { what: capture.label, typed: typed.number, within: 'a whole number' },
        },
      ];
    case 'text':
      return capture.kind === 'text' && capture.required && typed.text.trim() === '' ? [empty(capture)] : [];
    case 'check':
      return typed.seen ? [] : [{ code: 'NOT_SEEN', detail: {} }];
    case 'photo':
      return /^[0-9a-f]{64}$/.test(typed.sha256) ? [] : [empty(capture)];
    default:
      return [];
  }
}

const empty = (capture: Capture): EntryReason => ({ code: 'EMPTY', detail: { what: capture.label } });

function acceptedPoints(key: string, points: readonly string[], { entries }: EntryFacts): string[] {
  return points.filter((point) => lastEntry(entries, key, point)?.judgement.verdict === 'accepted');
}
