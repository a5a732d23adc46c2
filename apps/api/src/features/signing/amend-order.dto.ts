import { Type } from 'class-transformer';
import { IsDefined, IsIn, IsString, Length, MaxLength, ValidateNested } from 'class-validator';
import { IsText } from '../../platform/http/field-forms.js';
import { NewOrderDto } from '../../records/work/wire/order.dto.js';

/** The second person who confirms, at the same tablet. */
export class ConfirmationDto {
  @IsText()
  @MaxLength(100)
  signInName!: string;

  @IsIn(['password', 'pin'])
  method!: 'password' | 'pin';

  /** That person's own password or PIN. */
  @IsString()
  @Length(1, 256)
  secret!: string;
}

/** An order in place of the one that stands. */
export class AmendOrderDto {
  /** The whole order as it shall be. Where the removal is done, what came off is left out. */
  @IsDefined()
  @ValidateNested()
  @Type(() => NewOrderDto)
  order!: NewOrderDto;

  /** Why it is amended. */
  @IsText()
  @MaxLength(200)
  reason!: string;

  @IsDefined()
  @ValidateNested()
  @Type(() => ConfirmationDto)
  confirmation!: ConfirmationDto;
}

/** An entry that was judged by the order before, and is to be entered anew. */
export class EntryToRenewDto {
  stepId!: string;
  entryId!: string;
}

/** An order as it was amended. */
export class AmendedOrderDto {
  packageId!: string;
  orderId!: string;
  confirmedBy!: string;
  /** What was read against the order before: voided, and to be entered anew. */
  entriesToRenew!: EntryToRenewDto[];
  /** The package's version after it. */
  version!: number;
}
