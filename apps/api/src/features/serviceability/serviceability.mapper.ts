import { isPreservationOver } from '@strutbook/domain/serviceability/unfit.js';
import type { Preservation, ServiceabilityTag } from '../../platform/database/generated/client.js';
import { dayToWire, toWire } from '../../platform/http/instants.js';
import type { OpenVisitDto, PreservationDto, TagDto, UnfitReasonDto } from './serviceability.dto.js';

/** A tag on the wire. Total. */
export function tagToWire(row: ServiceabilityTag, counts: boolean): TagDto {
  const { id, componentId, tagNumber, reason, certificate, issuedBy } = row;
  return {
    ...{ id, componentId, tagNumber, reason, certificate, issuedBy, counts },
    status: row.status as TagDto['status'],
    at: toWire(row.at),
    voided: row.voidedSeq !== null,
    voidReason: row.voidReason,
  };
}

/** A preservation on the wire, as of a day. Total. */
export function preservationToWire(row: Preservation, counts: boolean, today: string): PreservationDto {
  const { id, componentId, method, document } = row;
  const goodUntil = dayToWire(row.goodUntil);
  return {
    ...{ id, componentId, method, document, goodUntil, counts },
    at: toWire(row.at),
    over: isPreservationOver(goodUntil, today),
    voided: row.voidedSeq !== null,
    voidReason: row.voidReason,
  };
}

/** What is held against fitting it, in words. Total. */
export function unfitReasons(
  tag: TagDto | undefined,
  openVisit: OpenVisitDto | null,
  quarantine: string | null,
): UnfitReasonDto[] {
  return [
    ...(tag === undefined || tag.status === 'serviceable'
      ? []
      : [
          {
            code: tag.status,
            text:
              tag.status === 'unserviceable'
                ? `Tag ${tag.tagNumber} says it is unserviceable: ${tag.reason}`
                : `Tag ${tag.tagNumber} puts it in quarantine: ${tag.reason}`,
          },
        ]),
    ...(openVisit === null
      ? []
      : [
          {
            code: 'in-shop' as const,
            text: `It was sent to ${openVisit.shop} under ${openVisit.orderReference}, and no return is recorded.`,
          },
        ]),
    ...(quarantine === null
      ? []
      : [{ code: 'in-quarantine-store' as const, text: `It is in quarantine at ${quarantine}.` }]),
  ];
}
