import type { CounterFigures } from '@strutbook/domain/runs/apu-counter.js';
import type { Boundary } from '@strutbook/domain/stays/boundary.js';
import { toBoundary } from '../../platform/http/boundary.dto.js';
import type { ChangeRequestDto } from './change.dto.js';

/** A change as the features understand it. */
export interface ChangeCommand {
  readonly airframeId: string;
  readonly positionNumber: number;
  readonly slotKind: 'engine' | 'pod' | 'apu';
  readonly outgoingSerial: string | null;
  readonly incomingSerial: string | null;
  readonly boundary: Boundary;
  readonly reason: string;
  readonly ratingCode: string | null;
  readonly removedToLocation: string | null;
  readonly outgoingReading: CounterFigures | null;
  readonly incomingReading: CounterFigures | null;
}

/** The command a request means; an empty serial is none. Refuses: INVALID_FIELDS of the boundary. */
export function toChangeCommand(dto: ChangeRequestDto): ChangeCommand {
  return {
    airframeId: dto.airframeId,
    positionNumber: dto.positionNumber,
    slotKind: dto.slot,
    outgoingSerial: textOrNull(dto.outgoingSerial),
    incomingSerial: textOrNull(dto.incomingSerial),
    boundary: toBoundary(dto.boundary),
    reason: dto.reason,
    ratingCode: textOrNull(dto.ratingCode),
    removedToLocation: textOrNull(dto.removedToLocation),
    outgoingReading: dto.outgoingReading ?? null,
    incomingReading: dto.incomingReading ?? null,
  };
}

function textOrNull(text: string | null | undefined): string | null {
  return text === undefined || text === null || text.trim() === '' ? null : text.trim();
}
