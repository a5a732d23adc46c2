import { ApiProperty } from '@nestjs/swagger';
import type { EntryReasonCode } from '@strutbook/domain/work/entry.js';
import { type AnyTypedDto, ShownTyped } from './any-typed.js';
import { StepDefinitionDto } from './procedure-content.dto.js';

/** Why an entry is not accepted. */
export class EntryReasonDto {
  @ApiProperty({ type: 'string' })
  code!: EntryReasonCode;

  /** The values its sentence needs. */
  @ApiProperty({
    type: 'object',
    additionalProperties: { oneOf: [{ type: 'string' }, { type: 'number' }], nullable: true },
  })
  detail!: Record<string, string | number | null>;
}

/** What was made of an entry. */
export class JudgementDto {
  verdict!: 'accepted' | 'rejected';
  reasons!: EntryReasonDto[];

  /** Figures computed, as text with their units. */
  @ApiProperty({ type: 'object', additionalProperties: { type: 'string', nullable: true } })
  computed!: Record<string, string | null>;
}

/** One thing captured in a step, as typed; every attempt is kept. */
export class StepEntryDto {
  id!: string;
  /** Key of the capture. */
  capture!: string;
  /** The fastener of a torque. */
  point!: string | null;
  kind!: string;

  @ShownTyped()
  typed!: AnyTypedDto;

  judgement!: JudgementDto;
  toolId!: string | null;
  /** Serial number of the tool. */
  tool!: string | null;
  /** What the register knows as the serial typed. */
  componentId!: string | null;
  photoId!: string | null;
  personId!: string;
  personName!: string;
  enteredAt!: string;
  voided!: boolean;
  voidReason!: string | null;
}

/** A signature on a step; undone or overtaken, it stays in sight. */
export class ShownSignatureDto {
  id!: string;
  meaning!: 'done' | 'inspection';
  /** For an inspection: the signature of the work it looked at. */
  coversId!: string | null;
  personId!: string;
  personName!: string;
  licence!: string | null;
  method!: string;
  performedAt!: string;
  signedAt!: string;
  /** The content that was signed. */
  contentHash!: string;
  undone!: boolean;
  undoneReason!: string | null;
  /** Why one person looked again at their own work. */
  reinspectionReason!: string | null;
  /** Whether it still holds for the step as it is now. */
  counts!: boolean;
}

/** A step that must be done before another. */
export class BlockerDto {
  code!: 'STEP_UNSIGNED' | 'INSPECTION_MISSING';
  stepId!: string;
  number!: number;
  title!: string;
}

/** Something a step asks for that is not there, or not accepted. */
export class MissingDto {
  code!: 'CAPTURE_MISSING' | 'CAPTURE_REJECTED';
  capture!: string;
  point!: string | null;
  label!: string;
  reasons!: EntryReasonDto[];
}

/** A step as it stands. */
export class StepDto {
  id!: string;
  packageId!: string;
  version!: number;
  /** SHA-256 of its content, which a signature is given on. */
  contentHash!: string;
  standing!: 'blocked' | 'open' | 'to-inspect' | 'signed' | 'changed' | 'rejected';
  blockers!: BlockerDto[];
  missing!: MissingDto[];
  definition!: StepDefinitionDto;
  entries!: StepEntryDto[];
  signatures!: ShownSignatureDto[];
}
