import { parseDate, parseMoment } from '../../format/utc-moment.js';
import { wireMinute } from '../../format/when.js';
import type { NewShopReturn, ShopVisit } from '../../server/shops/shop-records.js';
import type { Faults } from '../../ui/fields/act-form.js';

/** A change at one place, as typed. */
export interface TypedChange {
  readonly slotId: string;
  readonly comesOff: boolean;
  readonly removedToLocation: string;
  readonly incomingId: string | null;
  readonly at: string;
  readonly reason: string;
  readonly certificate: string;
  readonly disposition: string;
  readonly dispositionText: string;
}

/** The return as typed. */
export interface TypedReturn {
  readonly returnedAt: string;
  readonly locationName: string;
  readonly report: string;
  readonly certificate: string;
  readonly workDone: string;
  readonly changes: readonly TypedChange[];
  /** 'component kind' of each counter that begins again. */
  readonly resets: readonly string[];
  /** 'requirement component' of each that was met. */
  readonly met: readonly string[];
  readonly ratingCode: string;
  readonly method: string;
  readonly goodUntil: string;
  readonly document: string;
  readonly tagStatus: string;
  readonly tagNumber: string;
  readonly tagReason: string;
}

export const BLANK_CHANGE: TypedChange = {
  slotId: '',
  comesOff: true,
  removedToLocation: '',
  incomingId: null,
  at: '',
  reason: '',
  certificate: '',
  disposition: '',
  dispositionText: '',
};

export const BLANK_RETURN: TypedReturn = {
  returnedAt: '',
  locationName: '',
  report: '',
  certificate: '',
  workDone: '',
  changes: [],
  resets: [],
  met: [],
  ratingCode: '',
  method: '',
  goodUntil: '',
  document: '',
  tagStatus: '',
  tagNumber: '',
  tagReason: '',
};

type Slots = ShopVisit['build']['slots'];

const serialIn = (slots: Slots, slotId: string): string | null =>
  slots.find((slot) => slot.slotId === slotId)?.component?.serialNumber ?? null;

function faultsOfChange(change: TypedChange, slots: Slots): Faults {
  const off = change.comesOff && serialIn(slots, change.slotId) !== null;
  const at = parseMoment(change.at);
  return {
    ...(change.slotId === '' ? { slotId: 'Choose the place' } : {}),
    ...(off && change.removedToLocation === '' ? { removedToLocation: 'Choose where it went' } : {}),
    ...(!off && change.incomingId === null ? { incomingId: 'Choose what went on' } : {}),
    ...(change.at.trim() === '' || at.ok ? {} : { at: at.reason }),
    ...(change.reason.trim() === '' ? { reason: 'Enter why it was changed' } : {}),
    ...((change.disposition === '') === (change.dispositionText.trim() === '')
      ? {}
      : { disposition: 'Give both how it is controlled and the number or place, or neither' }),
  };
}

/** A few plain checks before sending; the server is the judge. */
export function faultsOfReturn(typed: TypedReturn, slots: Slots): Faults {
  const at = parseMoment(typed.returnedAt);
  const day = parseDate(typed.goodUntil);
  const preserved = [typed.method, typed.goodUntil, typed.document].some((text) => text.trim() !== '');
  const missing = (field: keyof TypedReturn, message: string): Faults =>
    String(typed[field]).trim() === '' ? { [field]: message } : {};
  const rows = typed.changes.map((change, place) =>
    Object.fromEntries(
      Object.entries(faultsOfChange(change, slots)).map(([field, fault]) => [
        `changes.${place}.${field}`,
        fault,
      ]),
    ),
  );
  return {
    ...(at.ok ? {} : { returnedAt: at.reason }),
    ...missing('locationName', 'Choose where it came back to'),
    ...missing('report', 'Enter the number of the shop report'),
    ...missing('workDone', 'Enter what was done'),
    ...Object.assign({}, ...rows),
    ...(preserved ? missing('method', 'Enter how it was preserved') : {}),
    ...(preserved && !day.ok ? { 'preservation.goodUntil': day.reason } : {}),
    ...(preserved ? missing('document', 'Enter the document it is preserved by') : {}),
    ...(typed.tagStatus === ''
      ? {}
      : {
          ...missing('tagNumber', 'Enter the number of the tag'),
          ...missing('tagReason', 'Enter why'),
        }),
  };
}

/** The return in the words of the server. */
export function returnWords(typed: TypedReturn, slots: Slots): NewShopReturn {
  const at = parseMoment(typed.returnedAt);
  const day = parseDate(typed.goodUntil);
  const filled = (text: string): string | null => (text.trim() === '' ? null : text.trim());
  return {
    returnedAt: at.ok ? wireMinute(at.instant) : '',
    locationName: typed.locationName,
    report: typed.report.trim(),
    certificate: filled(typed.certificate),
    workDone: typed.workDone.trim(),
    changes: typed.changes.map((change) => changeWords(change, slots)),
    resets: typed.resets.map((key) => {
      const [componentId = '', kind = ''] = key.split(' ');
      return { componentId, kind: kind as 'overhaul' | 'shop-visit' | 'repair' };
    }),
    accomplishments: typed.met.map((key) => {
      const [requirementId = '', componentId = ''] = key.split(' ');
      return { requirementId, componentId };
    }),
    ratingCode: filled(typed.ratingCode),
    preservation:
      filled(typed.method) === null
        ? null
        : {
            method: typed.method.trim(),
            goodUntil: day.ok ? day.date : '',
            document: typed.document.trim(),
          },
    tag:
      typed.tagStatus === ''
        ? null
        : {
            status: typed.tagStatus as 'serviceable' | 'unserviceable' | 'quarantine',
            tagNumber: typed.tagNumber.trim(),
            reason: typed.tagReason.trim(),
          },
  };
}

function changeWords(change: TypedChange, slots: Slots): NonNullable<NewShopReturn['changes']>[number] {
  const serial = serialIn(slots, change.slotId);
  const off = change.comesOff && serial !== null;
  const at = parseMoment(change.at);
  const filled = (text: string): string | null => (text.trim() === '' ? null : text.trim());
  return {
    slotId: change.slotId,
    outgoingSerial: off ? serial : null,
    removedToLocation: off ? filled(change.removedToLocation) : null,
    incomingId: change.incomingId,
    at: change.at.trim() !== '' && at.ok ? wireMinute(at.instant) : null,
    reason: change.reason.trim(),
    certificate: filled(change.certificate),
    disposition:
      off && change.disposition !== ''
        ? {
            method: change.disposition as NonNullable<
              NonNullable<NonNullable<NewShopReturn['changes']>[number]['disposition']>
            >['method'],
            text: change.dispositionText.trim(),
          }
        : null,
  };
}

const keyOf = (visitId: string): string => `strutbook.shop-return.${visitId}`;

/** What was typed before and not sent; blank when nothing was, or the browser keeps nothing. */
export function keptReturn(visitId: string): TypedReturn {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(visitId)) ?? 'null');
    return typeof kept === 'object' && kept !== null ? { ...BLANK_RETURN, ...kept } : BLANK_RETURN;
  } catch {
    return BLANK_RETURN;
  }
}

/** Keeps what is typed on this device until it is sent. */
export function keepReturn(visitId: string, typed: TypedReturn | null): void {
  try {
    if (typed === null) localStorage.removeItem(keyOf(visitId));
    else localStorage.setItem(keyOf(visitId), JSON.stringify(typed));
  } catch {
    // A browser that keeps nothing is no reason to stop.
  }
}
