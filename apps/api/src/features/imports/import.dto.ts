import { Type } from 'class-transformer';
import { IsIn, IsInt, IsOptional, IsString, IsUUID, Max, MaxLength, Min } from 'class-validator';
import { IsText } from '../../platform/http/field-forms.js';
import { NewlyOverDto, NewlyUnknownDto, OverrunDto } from '../../records/consequences/consequences.dto.js';

/** A file to check, and to apply once it is right. */
export class NewImportDto {
  @IsIn(['flights'])
  kind!: 'flights';

  @MaxLength(200)
  @IsText()
  fileName!: string;

  /** The file's text, at most 16 MiB. */
  @IsString()
  @MaxLength(16 * 1024 * 1024)
  content!: string;
}

/** What a file sent as text/csv is. */
export class NewImportQueryDto {
  @IsOptional()
  @IsIn(['flights'])
  kind?: 'flights';

  @IsOptional()
  @MaxLength(200)
  @IsText()
  fileName?: string;
}

/** Asks for imports, the newest first. */
export class ImportsQueryDto {
  /** The id the page before ended with. */
  @IsOptional()
  @IsUUID()
  after?: string;

  /** Rows a page, at most 200; 50 unless told. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(200)
  limit?: number;
}

/** What is wrong with a line of the file. */
export class ImportErrorDto {
  /** The file's own line. */
  line!: number;
  /** The column's heading; null where the whole line is meant. */
  column!: string | null;
  value!: string;
  reason!: string;
  fix!: string;
}

/** What applying the file adds to one airframe. */
export class ImportEffectDto {
  airframeId!: string;
  registration!: string;
  flights!: number;
  minutes!: number;
}

/** The work under way on an import, or done last. */
export class ImportJobDto {
  id!: string;
  state!: 'queued' | 'running' | 'done' | 'failed' | 'cancelled';
  done!: number;
  total!: number | null;
  failure!: string | null;
}

/** An applied import of the very same file. */
export class SameFileDto {
  id!: string;
  fileName!: string;
}

export type ImportStateWord = 'checking' | 'checked' | 'applying' | 'applied' | 'cancelled';

/** A file in a list. */
export class ImportRowDto {
  id!: string;
  kind!: 'flights';
  fileName!: string;
  state!: 'checking' | 'checked' | 'applying' | 'applied' | 'cancelled';
  /** Lines with something on them, without the heading. */
  rows!: number;
  /** Rows that can be applied, or were. */
  ready!: number;
  /** Lines that err. */
  failed!: number;
  /** Rows that say what is on record already. */
  already!: number;
  createdBy!: string;
  createdAt!: string;
}

/** A page of imports. */
export class ImportsPageDto {
  rows!: ImportRowDto[];
  /** What to send as `after` for the next page; null on the last. */
  next!: string | null;
}

/** A file, what its check found, and what became of it. */
export class ImportDto {
  id!: string;
  kind!: 'flights';
  fileName!: string;
  /** SHA-256 of the file, hexadecimal. */
  sha256!: string;
  state!: 'checking' | 'checked' | 'applying' | 'applied' | 'cancelled';
  rows!: number;
  ready!: number;
  failed!: number;
  already!: number;
  /** The first errors, by line; all that are kept are in errors.csv. */
  errors!: ImportErrorDto[];
  /** Errors kept beyond those shown here. */
  errorsLeftOut!: number;
  effect!: ImportEffectDto[];
  newlyOver!: NewlyOverDto[];
  newlyUnknown!: NewlyUnknownDto[];
  /** Spans flown over a limit that show by these flights. */
  overruns!: OverrunDto[];
  /** The import that applied this very file before. */
  sameAs!: SameFileDto | null;
  /** The root over the rows as recorded, hexadecimal; it stands in the journal. */
  root!: string | null;
  createdBy!: string;
  createdAt!: string;
  version!: number;
  job!: ImportJobDto | null;
}

/** A file taken in, its check begun. */
export class ImportBegunDto {
  id!: string;
  jobId!: string;
  state!: 'checking' | 'checked' | 'applying' | 'applied' | 'cancelled';
  version!: number;
}
