import { addDays, type CalendarDate } from '@strutbook/domain/units/calendar.js';
import type { Authorisation } from '../../platform/database/generated/client.js';
import { dayToWire } from '../../platform/http/instants.js';
import type { AuthorisationDto } from './authorisation.dto.js';

/** So many days before its end an authorisation is told as ending soon; common practice, no source. */
const SOON_DAYS = 30;

export const WITH_NAMES = {
  person: { select: { fullName: true } },
  airframeType: { select: { maker: true, designation: true } },
} as const;

type Row = Authorisation & {
  readonly person: { readonly fullName: string };
  readonly airframeType: { readonly maker: string; readonly designation: string } | null;
};

/** An authorisation as the wire has it, with how it stands on a day. Total. */
export function authorisationToWire(row: Row, on: CalendarDate): AuthorisationDto {
  const { id, personId, airframeTypeId, airframeType, reference, voidReason } = row;
  const [fromOn, toOn] = [dayToWire(row.fromOn), row.toOn === null ? null : dayToWire(row.toOn)];
  const voided = row.voidedSeq !== null;
  return {
    ...{ id, personId, personName: row.person.fullName, scope: row.scope as AuthorisationDto['scope'] },
    ...{ airframeTypeId, fromOn, toOn, reference, voided, voidReason },
    airframeType: airframeType === null ? null : `${airframeType.maker} ${airframeType.designation}`,
    standing: voided ? 'voided' : standingOn(fromOn, toOn, on),
  };
}

function standingOn(
  fromOn: CalendarDate,
  toOn: CalendarDate | null,
  on: CalendarDate,
): Exclude<AuthorisationDto['standing'], 'voided'> {
  if (on < fromOn) return 'to-come';
  if (toOn === null) return 'in-force';
  if (toOn < on) return 'ended';
  return toOn <= addDays(on, SOON_DAYS) ? 'ends-soon' : 'in-force';
}
