import { IsOptional, IsString, Matches, MaxLength, MinLength } from 'class-validator';

/** Who signs in. */
export class SignInDto {
  @IsString()
  @MinLength(1)
  @MaxLength(100)
  signInName!: string;

  @IsString()
  @MinLength(1)
  @MaxLength(256)
  password!: string;

  /** The operator's code; needed only where several are served. */
  @IsOptional()
  @IsString()
  @MaxLength(20)
  operatorCode?: string;
}

/** A new password in place of the present one. */
export class ChangePasswordDto {
  @IsString()
  @MinLength(1)
  @MaxLength(256)
  currentPassword!: string;

  /** At least 15 characters. */
  @IsString()
  @MinLength(1)
  @MaxLength(256)
  newPassword!: string;
}

/** A PIN to sign with at a tablet, in place of the one before. */
export class ChoosePinDto {
  /** One's own password: a PIN is chosen by nobody else. */
  @IsString()
  @MinLength(1)
  @MaxLength(256)
  password!: string;

  /** Six to twelve digits. */
  @Matches(/^[0-9]{6,12}$/, { context: { fix: 'Enter six to twelve digits.' } })
  pin!: string;
}

export class SessionPersonDto {
  id!: string;
  fullName!: string;
  signInName!: string;
  licence!: string | null;
  roles!: string[];
}

export class SessionOperatorDto {
  code!: string;
  name!: string;
}

/** The session of this browser. */
export class SessionDto {
  person!: SessionPersonDto;
  operator!: SessionOperatorDto;
  /** Sent back as x-csrf-token with every change. */
  csrfToken!: string;
  /** True until a password set by someone else was changed; until then nothing else is open. */
  mustChangePassword!: boolean;
  /** Whether a PIN is chosen that signs at a tablet. */
  hasPin!: boolean;
}
