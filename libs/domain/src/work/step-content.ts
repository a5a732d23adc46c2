import type { Json } from '../signing/statement.js';
import { dateOf } from '../units/calendar.js';
import { formatHours, type Instant } from '../units/minutes.js';
import type { StepEntry } from './entry.js';
import { entryText } from './entry-words.js';
import type { StepDefinition } from './step.js';

/**
 * What the content hash of a step is over, as plain JSON: its definition and every entry that is not voided, in the
 * order recorded. Hash its canonical form (RFC 8785). Who signed is no part of it. Total.
 */
export function stepContent(definition: StepDefinition, entries: readonly StepEntry[]): Json {
  return {
    definition: plain(definition),
    entries: entries.map((entry) => ({
      id: entry.id,
      capture: entry.capture,
      point: entry.point,
      typed: plain(entry.typed),
      judgement: plain(entry.judgement),
      tool: entry.tool,
      personId: entry.personId,
    })),
    version: 1,
  };
}

/** A record of plain values as JSON; a member that is not there stays away. */
function plain(value: unknown): Json {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return value;
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object') throw new RangeError(`no plain value: ${typeof value}`);
  const members = Object.entries(value).filter(([, member]) => member !== undefined);
  return Object.fromEntries(members.map(([key, member]) => [key, plain(member)]));
}

/** What the words to be signed are made of. */
export interface StepStatementFacts {
  /** The package: its title, its reference, and what it is on: 'airframe ZZ-417, position 2'. */
  readonly package: { readonly title: string; readonly reference: string | null; readonly on: string };
  readonly step: StepDefinition;
  /** Entries that are not voided, in the order recorded. */
  readonly entries: readonly StepEntry[];
  readonly meaning: 'done' | 'inspection';
  readonly performedAt: Instant;
  readonly signer: { readonly name: string; readonly licence: string | null };
  /** For an inspection: who signed the work. */
  readonly doneBy?: string | null;
  /** For a one-person re-inspection: why there was nobody else. */
  readonly reinspectionReason?: string | null;
}

/**
 * The words a signature on a step is given on, built by the server: what is attested, on which package and step, by
 * which data, with every entry as it was typed, when it was done, and by whom. Lines are parted by '\n'. Total.
 */
export function stepStatement(facts: StepStatementFacts): string {
  const { step, entries, signer } = facts;
  const captureOf = (key: string) => step.captures.find((capture) => capture.key === key) ?? null;
  return [
    attested(facts),
    `Package: ${facts.package.title}${facts.package.reference === null ? '' : ` (${facts.package.reference})`}, ${facts.package.on}`,
    `Step ${step.number}: ${step.title}`,
    ...(step.source === null ? [] : [`Data: ${step.source.document}, revision ${step.source.revision}`]),
    ...entries.map((entry) => entryText(captureOf(entry.capture), entry)),
    `Performed ${dateOf(facts.performedAt)} ${timeOfDay(facts.performedAt)} UTC`,
    `Signed by ${signer.name}${signer.licence === null ? '' : `, ${signer.licence}`}`,
  ].join('\n');
}

function attested({ meaning, doneBy, reinspectionReason }: StepStatementFacts): string {
  if (meaning === 'done') return 'I did this step as its data says, and what is entered is what I found.';
  const work = doneBy === null || doneBy === undefined ? 'the work' : `the work signed by ${doneBy}`;
  if (reinspectionReason === null || reinspectionReason === undefined)
    return `I inspected ${work}, which I did not do, and found it satisfactory.`;
  return `I did this work myself and inspected it again, and found it satisfactory. Why alone: ${reinspectionReason}`;
}

function timeOfDay(at: Instant): string {
  const minute = ((at % 1440) + 1440) % 1440;
  return formatHours(minute).padStart(5, '0');
}
