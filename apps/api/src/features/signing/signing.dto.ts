import { Type } from 'class-transformer';
import { IsIn, IsOptional, IsString, Length, Matches, MaxLength, ValidateNested } from 'class-validator';
import { CounterFiguresDto } from '../../platform/http/counter-figures.dto.js';
import { IsInstantText, IsText } from '../../platform/http/field-forms.js';
import { ObjectionDto } from '../../platform/http/objection.dto.js';
import { BlockerDto, MissingDto } from '../../records/work/wire/step.dto.js';

/** For which signature the words are asked. */
export class StatementQueryDto {
  /** That it was done, or that another person looked at it. */
  @IsIn(['done', 'inspection'])
  meaning!: 'done' | 'inspection';

  /** When it was done or looked at, UTC. */
  @IsInstantText()
  performedAt!: string;

  /** Who will sign, when it is another person at the same tablet. */
  @IsOptional()
  @IsText()
  @MaxLength(100)
  signInName?: string;

  /** Why one person inspects their own work; it is part of the words. */
  @IsOptional()
  @IsText()
  @MaxLength(300)
  reinspectionReason?: string;
}

/** The words a signature would be given on, and what keeps it from being given. */
export class StatementDto {
  /** Lines parted by line feeds. */
  statement!: string;
  /** SHA-256 of words, content, meaning and moment; sent back at signing. */
  digest!: string;
  /** Hash of the step's content as it stands. */
  contentHash!: string;
  missing!: MissingDto[];
  blockers!: BlockerDto[];
}

/** Who signs, and by what they show it. */
export class ProofDto {
  @IsIn(['password', 'pin'])
  method!: 'password' | 'pin';

  /** The signer's own password or PIN. */
  @IsString()
  @Length(1, 256)
  secret!: string;

  /** The signer's sign-in name, when it is another person at the same tablet. */
  @IsOptional()
  @IsText()
  @MaxLength(100)
  signInName?: string;
}

/** A signature on a step's exact content. */
export class SignStepDto extends ProofDto {
  @IsIn(['done', 'inspection'])
  meaning!: 'done' | 'inspection';

  /** When it was done or looked at, whole minutes of UTC. */
  @IsInstantText()
  performedAt!: string;

  /** The digest of the words that were seen. */
  @Matches(/^[0-9a-f]{64}$/)
  digest!: string;

  /** Why one person inspects their own work, where the rule set allows it. */
  @IsOptional()
  @IsText()
  @MaxLength(300)
  reinspectionReason?: string;

  /** What the counter of an auxiliary power unit showed that this step moves; asked of no other. */
  @IsOptional()
  @ValidateNested()
  @Type(() => CounterFiguresDto)
  counterReading?: CounterFiguresDto;
}

/** Undoing a signature: by its signer, or by certifying staff. */
export class UndoSignatureDto extends ProofDto {
  /** Why it does not hold. */
  @IsText()
  @MaxLength(300)
  reason!: string;
}

/** A component that a signature moved. */
export class MovedByStepDto {
  id!: string;
  serialNumber!: string;
  direction!: 'removal' | 'installation';
  at!: string;
}

/** A signature as it was given. */
export class GivenSignatureDto {
  id!: string;
  stepId!: string;
  packageId!: string;
  meaning!: 'done' | 'inspection';
  /** For an inspection: the signature of the work it covers. */
  coversId!: string | null;
  personId!: string;
  person!: string;
  licence!: string | null;
  method!: 'password' | 'pin';
  performedAt!: string;
  signedAt!: string;
  statement!: string;
  /** Hash of the step's content that was signed. */
  contentHash!: string;
  /** SHA-256 of what was signed: words, signer, moment and content. */
  signatureHash!: string;
  reinspectionReason!: string | null;
  moved!: MovedByStepDto[];
  /** What is held against what was fitted, without forbidding it. */
  objections!: ObjectionDto[];
  /** The step's version after it. */
  version!: number;
}

/** A signature that was undone. */
export class UndoneSignatureDto {
  id!: string;
  stepId!: string;
  packageId!: string;
  undoneBy!: string;
  reason!: string;
  /** The step's version after it. */
  version!: number;
}
