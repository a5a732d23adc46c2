import { IsIn, MaxLength } from 'class-validator';
import { IsText } from '../../platform/http/field-forms.js';

export const LOCATION_KINDS = ['store', 'shop', 'quarantine', 'transferred-out', 'scrapped'] as const;

/** A new location. */
export class NewLocationDto {
  @MaxLength(80)
  @IsText()
  name!: string;

  @IsIn(LOCATION_KINDS)
  kind!: 'store' | 'shop' | 'quarantine' | 'transferred-out' | 'scrapped';
}

/** Where a component is when it is not installed. */
export class LocationDto {
  id!: string;
  name!: string;
  kind!: 'store' | 'shop' | 'quarantine' | 'transferred-out' | 'scrapped';
}
