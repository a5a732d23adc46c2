import type { Boundary } from '@strutbook/domain/stays/boundary.js';
import { IsIn, IsOptional, IsString, IsUUID, Matches, MaxLength } from 'class-validator';
import { refuse } from '../problems/refusal.error.js';
import { dayFromWire, fromWire, toInstant } from './instants.js';

/** When something came to a place or left it: old records often have a log page or a date, and no minute. */
export class BoundaryDto {
  /** How it is told. */
  @IsIn(['instant', 'after-page', 'before-first', 'after-last'])
  kind!: 'instant' | 'after-page' | 'before-first' | 'after-last';

  /** For an instant: 'YYYY-MM-DDTHH:MMZ', UTC. */
  @IsOptional()
  @IsString()
  at?: string;

  /** For a log page: its number as written. */
  @IsOptional()
  @IsString()
  @MaxLength(20)
  page?: string;

  /** For the first or last flight of a date: 'YYYY-MM-DD', in the zone of the airframe's rule set. */
  @IsOptional()
  @Matches(/^\d{4}-\d{2}-\d{2}$/)
  on?: string;

  /** The airframe whose log or days are meant, where the place doesn't tell. */
  @IsOptional()
  @IsUUID()
  airframeId?: string;
}

/** The boundary as the core reads it. Refuses: INVALID_FIELDS naming the part that is missing or no such minute or day. */
export function toBoundary(dto: BoundaryDto, field = 'boundary'): Boundary {
  if (dto.kind === 'instant') {
    const at = dto.at === undefined ? null : fromWire(dto.at);
    return at === null
      ? missing(`${field}.at`, 'an instant', 'Enter it as 2026-11-03T14:05Z, in UTC.')
      : { kind: 'instant', at: toInstant(at) };
  }
  if (dto.kind === 'after-page')
    return dto.page === undefined || dto.page === ''
      ? missing(`${field}.page`, 'a log page', 'Enter the number of the log page.')
      : { kind: 'after-page', page: dto.page };
  return dto.on === undefined || dayFromWire(dto.on) === null
    ? missing(`${field}.on`, 'a date', 'Enter it as 2026-11-03.')
    : { kind: dto.kind, on: dto.on };
}

function missing(field: string, what: string, fix: string): never {
  return refuse({ code: 'INVALID_FIELDS', fields: [{ field, reason: `This needs ${what}.`, fix }] });
}
