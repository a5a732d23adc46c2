import { IsIn, IsOptional, IsUUID, MaxLength } from 'class-validator';
import { IsDayText, IsText } from '../../platform/http/field-forms.js';
import { SCOPES } from '../../records/authorisations/authorisations.js';

/** What a person may sign, to be. */
export class NewAuthorisationDto {
  @IsUUID()
  personId!: string;

  /** Signing work, second looks at work, or releases. The person needs a role that signs it too. */
  @IsIn(SCOPES, {
    message: 'it must be work, inspection or release',
    context: { fix: 'Choose what the person may sign.' },
  })
  scope!: 'work' | 'inspection' | 'release';

  /** The type of airframe it is for; for all types, when null or left out. */
  @IsOptional()
  @IsUUID()
  airframeTypeId?: string | null;

  /** The first day it is good for. */
  @IsDayText()
  fromOn!: string;

  /** The last day it is good for; without an end, when null or left out. */
  @IsOptional()
  @IsDayText()
  toOn?: string | null;

  /** The letter or list it rests on. */
  @MaxLength(120)
  @IsText()
  reference!: string;
}

/** Asks for the authorisations of one person; of everyone, when left out. */
export class AuthorisationsQueryDto {
  @IsOptional()
  @IsUUID()
  personId?: string;
}

/** Why an authorisation is voided. */
export class VoidAuthorisationDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}

/** When an authorisation ends, and why. */
export class EndAuthorisationDto {
  /** The last day it is good for. */
  @IsDayText()
  lastOn!: string;

  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}

/** What a person may sign, from a day to a day. */
export class AuthorisationDto {
  id!: string;
  personId!: string;
  personName!: string;
  scope!: 'work' | 'inspection' | 'release';
  /** Null: on all types of airframe. */
  airframeTypeId!: string | null;
  /** Maker and designation of that type. */
  airframeType!: string | null;
  fromOn!: string;
  /** The last day it is good for; null while no end is set. */
  toOn!: string | null;
  reference!: string;
  /** How it stands today, in UTC. Within thirty days of its end it is told as ending soon. */
  standing!: 'in-force' | 'ends-soon' | 'to-come' | 'ended' | 'voided';
  voided!: boolean;
  voidReason!: string | null;
}
