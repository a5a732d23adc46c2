/** What is granted; null where a dimension does not count. */
export class AmountsDto {
  minutes!: number | null;
  cycles!: number | null;
  days!: number | null;
  months!: number | null;
}

/** When it is due: counters, calendar, an event, and the outer bound of all. */
export class GrantedDto extends AmountsDto {
  /** Due when this happens next; null: at no event. */
  event!: 'shop-visit' | 'installation' | 'removal' | 'main-base-return' | null;
  /** Governs as soon as it comes, from the same point. */
  notToExceed!: AmountsDto | null;
}

/** What is granted for intervals up to a length: of what is given the lesser applies. */
export class GrantedTierDto {
  upTo!: number | null;
  percent!: number | null;
  atMost!: number | null;
  atMostDays!: number | null;
}

/** What is granted in each dimension; no tiers where nothing is. */
export class GrantedTiersDto {
  minutes!: GrantedTierDto[];
  cycles!: GrantedTierDto[];
  days!: GrantedTierDto[];
  months!: GrantedTierDto[];
}

/** How far before and after its due it may be met without planned times shifting. */
export class GrantedWindowDto {
  early!: GrantedTiersDto;
  late!: GrantedTiersDto;
}

/** From where the next is counted. */
export class RebasedDto {
  early!: 'from-done' | 'from-due';
  within!: 'from-done' | 'from-due';
  varied!: 'from-done' | 'from-due';
  beyond!: 'from-done' | 'from-due';
}
