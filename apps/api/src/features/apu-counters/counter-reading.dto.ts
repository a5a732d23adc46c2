import { Type } from 'class-transformer';
import { IsInt, Max, MaxLength, Min, ValidateNested } from 'class-validator';
import { CounterFiguresDto } from '../../platform/http/counter-figures.dto.js';
import { IsInstantText, IsText } from '../../platform/http/field-forms.js';
import { ConsequencesDto } from '../../records/consequences/consequences.dto.js';

/** A reading of the counter of an auxiliary power unit. */
export class NewReadingDto extends CounterFiguresDto {
  /** When it was read, whole minutes of UTC. */
  @IsInstantText()
  at!: string;

  /** The document it is written in. */
  @MaxLength(120)
  @IsText()
  source!: string;
}

/** A counter that was replaced: where the old one ended, and where the new one begins. */
export class NewReplacementDto {
  @IsInstantText()
  at!: string;

  /** The old counter's last reading. */
  @ValidateNested()
  @Type(() => CounterFiguresDto)
  last!: CounterFiguresDto;

  /** The new counter's first reading. */
  @ValidateNested()
  @Type(() => CounterFiguresDto)
  first!: CounterFiguresDto;

  @MaxLength(120)
  @IsText()
  source!: string;
}

/** A reading as it was, in place of a wrong one. */
export class CorrectReadingDto {
  @IsInt()
  @Min(0)
  @Max(100_000_000)
  minutes!: number;

  @IsInt()
  @Min(0)
  @Max(10_000_000)
  starts!: number;

  /** Why the other one was wrong. */
  @MaxLength(200)
  @IsText()
  reason!: string;
}

/** Why a reading is voided; it stays to be seen. */
export class VoidReadingDto {
  @MaxLength(200)
  @IsText()
  reason!: string;
}

/** A reading on record. */
export class CounterReadingDto {
  id!: string;
  at!: string;
  /** As it went on, as it came off, in between, or as the counter was replaced. */
  kind!: 'installed' | 'removed' | 'read' | 'replaced';
  minutes!: number;
  starts!: number;
  /** Where the new counter begins, when it was replaced. */
  first!: CounterFiguresDto | null;
  /** What the counter had run since the reading before; null for the first one. */
  ran!: CounterFiguresDto | null;
  source!: string | null;
  voided!: boolean;
  voidReason!: string | null;
}

/** The readings of one counter, the newest first. */
export class CounterReadingsDto {
  componentId!: string;
  serialNumber!: string;
  readings!: CounterReadingDto[];
  /** What it has counted from its first reading on. */
  counted!: CounterFiguresDto;
  /** When it was last read; null where it never was. */
  readAt!: string | null;
}

/** What recording, correcting or voiding a reading did. */
export class CounterAnswerDto extends CounterReadingsDto {
  consequences!: ConsequencesDto;
}
