import { Type } from 'class-transformer';
import { IsInt, IsOptional, IsUUID, Max, Min } from 'class-validator';

/** Which entries. */
export class JournalQueryDto {
  /** An airframe, component, package, flight, person …; left out, all. */
  @IsOptional()
  @IsUUID()
  subject?: string;

  /** The 'next' of the page before: the number of its last entry. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(0)
  after?: number;

  /** How many; 100 unless told. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(500)
  limit?: number;
}

/** An entry of the journal. */
export class JournalEntryDto {
  number!: number;
  /** The chain it is in. */
  stream!: string;
  /** Its place in the chain, from 1. */
  seq!: number;
  kind!: string;
  recordedAt!: string;
  /** Who acted; null for the system. */
  by!: string | null;
  /** The canonical text that was hashed. */
  body!: string;
  /** The hash of the entry before in its chain, in hexadecimal. */
  prev!: string;
  /** Its own hash. */
  hash!: string;
}

/** A page of the journal, in the order of the entries' numbers. */
export class JournalPageDto {
  rows!: JournalEntryDto[];
  next!: string | null;
}
