import { IsOptional, IsString, MaxLength, MinLength } from 'class-validator';

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
}
