import { IsNotEmpty, IsOptional, IsString, Length, Matches, MaxLength, ValidateIf } from 'class-validator';
import { ObjectionDto } from '../../platform/http/objection.dto.js';

/** The rule set a release is made under. */
export class ReleaseRuleSetDto {
  code!: string;
  name!: string;
  /** The rule the statement follows. */
  source!: string;
}

/** What was looked at without anything being held against it. */
export class PassedDto {
  label!: string;
  /** How many passed. */
  count!: number;
  /** Of how many looked at. */
  of!: number;
}

/** What stands against releasing a package, and what will be signed. */
export class ReleaseCheckDto {
  /** The state of the records the check is on. */
  asOf!: string;
  packageNumber!: string;
  /** What was done, in one sentence. */
  summary!: string;
  ruleSet!: ReleaseRuleSetDto;
  /** The words to be signed; who signs and when is added at signing. */
  statement!: string;
  /** SHA-256 of everything the check looked at; sent back at signing. */
  digest!: string;
  objections!: ObjectionDto[];
  passed!: PassedDto[];
  /** True when the package is released: this is then what its release froze. */
  released!: boolean;
  /** The package's version. */
  version!: number;
}

/** A signature on what the check showed. */
export class SignReleaseDto {
  /** The signer's own password, again; left out when the PIN is given. */
  @ValidateIf(({ pin }: SignReleaseDto) => pin === undefined)
  @IsString()
  @IsNotEmpty()
  @MaxLength(200)
  password?: string;

  /** The signer's own PIN, in place of the password. */
  @IsOptional()
  @IsString()
  @Length(1, 12)
  pin?: string;

  /** The digest of the check that was seen. */
  @Matches(/^[0-9a-f]{64}$/)
  digest!: string;
}

/** The printed certificate of a release, as the server keeps it. */
export class CertificateDto {
  /** Its file is at /documents/{id}. */
  documentId!: string;
  fileName!: string;
  pages!: number;
  /** Of its bytes, in hexadecimal. */
  sha256!: string;
}

/** A release as it was signed. */
export class ReleaseNoteDto {
  id!: string;
  number!: string;
  packageId!: string;
  packageNumber!: string;
  summary!: string;
  /** The registration; null for a component on no airframe. */
  airframe!: string | null;
  /** The registration, or the component's description and serial number. */
  subject!: string;
  ruleSet!: ReleaseRuleSetDto;
  signedAt!: string;
  person!: string;
  licence!: string | null;
  /** The whole statement, as signed. */
  statement!: string;
  /** SHA-256 of what was signed: statement, signer, moment and the frozen content's own hash. */
  contentHash!: string;
  /** SHA-256 of the content the check looked at, as frozen. */
  snapshotHash!: string;
  digest!: string;
  objections!: ObjectionDto[];
  passed!: PassedDto[];
  /** Null while it is being prepared, which takes seconds. */
  certificate!: CertificateDto | null;
  /** The package's version after the release. */
  version!: number;
}
