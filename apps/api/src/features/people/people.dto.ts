import {
  ArrayMinSize,
  ArrayUnique,
  IsArray,
  IsBoolean,
  IsIn,
  IsOptional,
  IsString,
  Matches,
  MaxLength,
  MinLength,
} from 'class-validator';
import { ROLES } from '../../platform/access/roles.js';

/** A person to be. */
export class NewPersonDto {
  /** Lower-case letters, digits, dots and hyphens. */
  @IsString()
  @Matches(/^[a-z0-9][a-z0-9.-]{1,49}$/, {
    message: 'the sign-in name must be 2 to 50 lower-case letters, digits, dots or hyphens',
  })
  signInName!: string;

  @IsString()
  @MinLength(1)
  @MaxLength(200)
  fullName!: string;

  @IsArray()
  @ArrayMinSize(1)
  @ArrayUnique()
  @IsIn(ROLES, { each: true })
  roles!: string[];

  /** The number of the person's maintenance licence. */
  @IsOptional()
  @IsString()
  @MinLength(1)
  @MaxLength(100)
  licence?: string;

  /** The first password, at least 15 characters; the person must change it. */
  @IsString()
  @MinLength(1)
  @MaxLength(256)
  password!: string;

  /** False when the person chose this password; true unless told. */
  @IsOptional()
  @IsBoolean()
  mustChangePassword?: boolean;
}

export class PersonDto {
  id!: string;
  signInName!: string;
  fullName!: string;
  roles!: string[];
  licence!: string | null;
  mustChangePassword!: boolean;
  /** When the person was shut out; null while they may sign in. */
  disabledAt!: string | null;
  version!: number;
}

export class PeopleDto {
  rows!: PersonDto[];
}
