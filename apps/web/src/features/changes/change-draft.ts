import { parseDate, parseMoment } from '../../format/utc-moment.js';
import { wireMinute } from '../../format/when.js';
import type { Boundary, ChangeRequest, ChangeSlot } from '../../server/wire.js';
import type { FieldMessage } from '../../ui/messages/error-summary.js';
import { BLANK_FIGURES, checkFigures, figuresOf, type TypedFigures } from '../../ui/reading/figures.js';

export type BoundaryKind = Boundary['kind'];

/** The form as typed. */
export interface ChangeDraft {
  readonly airframeId: string;
  readonly positionNumber: string;
  readonly slot: ChangeSlot;
  readonly boundaryKind: BoundaryKind;
  readonly moment: string;
  readonly page: string;
  readonly date: string;
  /** Null while nobody said: then as the record has it. */
  readonly comesOff: boolean | null;
  readonly outgoingSerial: string;
  readonly removedToLocation: string;
  readonly goesOn: boolean;
  readonly incomingSerial: string;
  readonly ratingCode: string;
  readonly reason: string;
  /** What the counters of auxiliary power units showed. */
  readonly offFigures: TypedFigures;
  readonly onFigures: TypedFigures;
}

export const EMPTY_DRAFT: ChangeDraft = {
  airframeId: '',
  positionNumber: '',
  slot: 'engine',
  boundaryKind: 'instant',
  moment: '',
  page: '',
  date: '',
  comesOff: null,
  outgoingSerial: '',
  removedToLocation: '',
  goesOn: true,
  incomingSerial: '',
  ratingCode: '',
  reason: '',
  offFigures: BLANK_FIGURES,
  onFigures: BLANK_FIGURES,
};

/** The controls' ids, by the server's names of the fields. */
export const FIELD_IDS = {
  airframeId: 'change-airframe',
  positionNumber: 'change-position',
  slot: 'change-slot',
  boundary: 'change-boundary',
  'boundary.kind': 'change-boundary',
  'boundary.at': 'change-moment',
  'boundary.page': 'change-page',
  'boundary.on': 'change-date',
  outgoingSerial: 'change-outgoing',
  removedToLocation: 'change-removed-to',
  outgoingReading: 'change-off-hours',
  'outgoingReading.minutes': 'change-off-hours',
  'outgoingReading.starts': 'change-off-starts',
  incomingSerial: 'change-incoming',
  ratingCode: 'change-rating',
  incomingReading: 'change-on-hours',
  'incomingReading.minutes': 'change-on-hours',
  'incomingReading.starts': 'change-on-starts',
  reason: 'change-reason',
} as const satisfies Record<string, string>;

export type FieldName = keyof typeof FIELD_IDS;

type Missing = Partial<Record<FieldName, string>>;

function boundaryOf(draft: ChangeDraft, missing: Missing): Boundary {
  if (draft.boundaryKind === 'instant') {
    const parsed = parseMoment(draft.moment);
    if (!parsed.ok) missing['boundary.at'] = parsed.reason;
    return { kind: 'instant', at: parsed.ok ? wireMinute(parsed.instant) : '' };
  }
  if (draft.boundaryKind === 'after-page') {
    if (draft.page.trim() === '')
      missing['boundary.page'] = 'Enter the number of the log page, for example 0417';
    return { kind: 'after-page', page: draft.page.trim() };
  }
  const parsed = parseDate(draft.date);
  if (!parsed.ok) missing['boundary.on'] = parsed.reason;
  return { kind: draft.boundaryKind, on: parsed.ok ? parsed.date : '' };
}

function whatMoves(draft: ChangeDraft, missing: Missing): void {
  if (draft.comesOff === false && !draft.goesOn)
    missing.incomingSerial = 'Say what comes off, or what goes on: one of them must';
  if (draft.comesOff !== false && draft.outgoingSerial.trim() === '')
    missing.outgoingSerial = 'Enter the serial that comes off, as on its data plate';
  if (draft.comesOff !== false && draft.removedToLocation === '')
    missing.removedToLocation = 'Choose where the removed one goes';
  if (draft.goesOn && draft.incomingSerial.trim() === '')
    missing.incomingSerial = 'Enter the serial that goes on, as on its data plate';
}

/** An auxiliary power unit counts by its own counter, which is read as it comes off and as it goes on. */
function whatCountersShow(
  { slot, comesOff, goesOn, offFigures, onFigures }: ChangeDraft,
  missing: Missing,
): void {
  if (slot !== 'apu') return;
  const sides = [
    ['outgoingReading', comesOff !== false, offFigures],
    ['incomingReading', goesOn, onFigures],
  ] as const;
  for (const [name, moves, figures] of sides) {
    if (!moves) continue;
    const { minutes, starts } = checkFigures(figures);
    if (minutes !== undefined) missing[`${name}.minutes`] = minutes;
    if (starts !== undefined) missing[`${name}.starts`] = starts;
  }
}

export type ReadDraft =
  | { readonly ok: true; readonly request: ChangeRequest }
  | { readonly ok: false; readonly missing: Missing };

/** The request a draft means, or what is still missing. Whether it can be is the server's to say. */
export function readDraft(draft: ChangeDraft): ReadDraft {
  const missing: Missing = {};
  if (draft.airframeId === '') missing.airframeId = 'Choose the airframe';
  if (draft.positionNumber === '') missing.positionNumber = 'Choose the position';
  const boundary = boundaryOf(draft, missing);
  whatMoves(draft, missing);
  whatCountersShow(draft, missing);
  if (draft.reason.trim() === '') missing.reason = 'Enter why it was changed';
  if (Object.keys(missing).length > 0) return { ok: false, missing };
  return {
    ok: true,
    request: {
      airframeId: draft.airframeId,
      positionNumber: Number(draft.positionNumber),
      slot: draft.slot,
      outgoingSerial: draft.comesOff === false ? null : draft.outgoingSerial.trim(),
      incomingSerial: draft.goesOn ? draft.incomingSerial.trim() : null,
      boundary,
      reason: draft.reason.trim(),
      ...(draft.goesOn && draft.slot === 'engine' && draft.ratingCode !== ''
        ? { ratingCode: draft.ratingCode }
        : {}),
      ...(draft.comesOff === false ? {} : { removedToLocation: draft.removedToLocation }),
      ...(draft.slot === 'apu' && draft.comesOff !== false
        ? { outgoingReading: figuresOf(draft.offFigures) }
        : {}),
      ...(draft.slot === 'apu' && draft.goesOn ? { incomingReading: figuresOf(draft.onFigures) } : {}),
    },
  };
}

/** What is missing as lines for the summary, in the order of the form. */
export function missingLines(missing: Missing): readonly FieldMessage[] {
  return (Object.keys(FIELD_IDS) as FieldName[]).flatMap((field) => {
    const message = missing[field];
    return message === undefined ? [] : [{ fieldId: FIELD_IDS[field], message }];
  });
}
