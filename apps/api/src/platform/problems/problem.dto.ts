import { ApiProperty } from '@nestjs/swagger';

/** One field that was refused. */
export class FieldProblemDto {
  /** The field's path in the request, with dots and indexes. */
  field!: string;
  /** Why it was refused. */
  reason!: string;
  /** What to enter instead. */
  fix!: string;
}

/** Why a request was refused or failed. Nothing was changed. Source: RFC 9457. */
export class ProblemDto {
  type!: string;
  title!: string;
  status!: number;
  detail!: string;
  /** The reason as a word for programs; it never changes its meaning. */
  code!: string;
  @ApiProperty({ type: [FieldProblemDto] })
  fields!: FieldProblemDto[];
  requestId!: string;
}
