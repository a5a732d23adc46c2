import type { EntryReason, Judgement, Typed } from './entry.js';
import { judgement } from './judgement.js';

/** What the order says comes off and goes on; null where it does not say. */
export interface OrderedFacts {
  readonly outgoingSerial: string | null;
  readonly outgoingPartNumber: string | null;
  readonly incomingSerial: string | null;
  readonly incomingPartNumber: string | null;
  readonly positionNumber: number | null;
}

/** What the register has for a serial. */
export interface RegisterFacts {
  readonly partNumber: string;
  readonly description: string;
  /** Where it is, in words. */
  readonly place: string;
  /** Null where nobody recorded it. */
  readonly serviceable: boolean | null;
}

type ComponentTyped = Extract<Typed, { kind: 'component-off' | 'component-on' }>;
type PapersTyped = Extract<Typed, { kind: 'papers' }>;

/**
 * Judges a serial read from its plate: against the order (serial, part number, position) and against the register.
 * What goes on is serviceable, as far as the register knows. What the order leaves open is not compared.
 *
 * Computed: 'partNumber', 'description' and 'place' as the register has them, null where it has none. Total.
 *
 * Source: NASA ASRS report 1978585 (the wrong engine was replaced): serial and position before the work goes on.
 */
export function judgeComponent(
  typed: ComponentTyped,
  facts: { readonly ordered: OrderedFacts | null; readonly register: RegisterFacts | null },
): Judgement {
  const { ordered, register } = facts;
  const isOn = typed.kind === 'component-on';
  const expected = {
    serial: (isOn ? ordered?.incomingSerial : ordered?.outgoingSerial) ?? null,
    partNumber: (isOn ? ordered?.incomingPartNumber : ordered?.outgoingPartNumber) ?? null,
  };
  const reasons = [
    ...serialReasons(typed.serialNumber, expected.serial, register),
    ...partNumberReasons(typed.partNumber, expected.partNumber, register),
    ...positionReasons(typed.positionNumber, ordered?.positionNumber ?? null),
    ...(isOn && register?.serviceable === false ? [unserviceable(typed.serialNumber, 'the register')] : []),
  ];
  return judgement(reasons, {
    partNumber: register?.partNumber ?? null,
    description: register?.description ?? null,
    place: register?.place ?? null,
  });
}

function serialReasons(typed: string, ordered: string | null, register: RegisterFacts | null): EntryReason[] {
  if (isBlank(typed)) return [{ code: 'EMPTY', detail: { what: 'The serial number' } }];
  return [
    ...(ordered === null || isSameNumber(typed, ordered) ? [] : [serialDiffers(typed, ordered)]),
    ...(register === null ? [{ code: 'NOT_IN_REGISTER' as const, detail: { typed } }] : []),
  ];
}

const serialDiffers = (typed: string, expected: string): EntryReason => ({
  code: 'SERIAL_DIFFERS',
  detail: { typed, expected },
});

function partNumberReasons(
  typed: string | null,
  ordered: string | null,
  register: RegisterFacts | null,
): EntryReason[] {
  if (typed === null || isBlank(typed)) return [];
  const differs = (expected: string, by: 'order' | 'register'): EntryReason => ({
    code: 'PART_NUMBER_DIFFERS',
    detail: { typed, expected, by },
  });
  if (ordered !== null && !isSameNumber(typed, ordered)) return [differs(ordered, 'order')];
  if (register !== null && !isSameNumber(typed, register.partNumber))
    return [differs(register.partNumber, 'register')];
  return [];
}

function positionReasons(typed: string | null, ordered: number | null): EntryReason[] {
  if (ordered === null) return [];
  const said = typed === null || isBlank(typed) ? null : typed.trim();
  if (said !== null && /^\d{1,3}$/.test(said) && Number(said) === ordered) return [];
  return [{ code: 'POSITION_DIFFERS', detail: { typed: said, expected: ordered } }];
}

/**
 * Judges a plate against its release document: both serials are there and the same, the order's where it names one;
 * the document has a number; the tag says serviceable. What is rejected here goes to quarantine. Total.
 *
 * Source: 14 CFR 45.13 (the plate's identity); NASA ASRS report 722521 (plate and logbook differed); M.A.501 of
 * Reg. (EU) 1321/2014, from memory (no fitting without a release document).
 */
export function judgePapers(typed: PapersTyped, ordered: OrderedFacts | null): Judgement {
  const { plateSerial, documentSerial } = typed;
  const incoming = ordered?.incomingSerial ?? null;
  const both = !isBlank(plateSerial) && !isBlank(documentSerial);
  const reasons: EntryReason[] = [
    ...missingPaper('serial on the plate', plateSerial),
    ...missingPaper('serial on the document', documentSerial),
    ...missingPaper('number of the document', typed.documentNumber),
    ...(both && !isSameNumber(plateSerial, documentSerial)
      ? [{ code: 'PAPERS_DIFFER' as const, detail: { plate: plateSerial, document: documentSerial } }]
      : []),
    ...(incoming === null || isBlank(plateSerial) || isSameNumber(plateSerial, incoming)
      ? []
      : [serialDiffers(plateSerial, incoming)]),
    ...(typed.tag === 'unserviceable' ? [unserviceable(plateSerial, 'its tag')] : []),
  ];
  return judgement(reasons);
}

function missingPaper(what: string, typed: string): EntryReason[] {
  return isBlank(typed) ? [{ code: 'PAPERS_MISSING', detail: { what } }] : [];
}

const unserviceable = (serial: string, by: string): EntryReason => ({
  code: 'TAGGED_UNSERVICEABLE',
  detail: { serial, by },
});

const isBlank = (text: string) => text.trim() === '';

/** Serials and part numbers are the same whatever their case and the spaces around and doubled in them. Total. */
export function isSameNumber(a: string, b: string): boolean {
  const plain = (text: string) => text.trim().replace(/\s+/g, ' ').toUpperCase();
  return plain(a) === plain(b);
}
