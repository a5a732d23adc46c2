import { GrantedDto, GrantedTiersDto, GrantedWindowDto, RebasedDto } from './rules/granted-view.dto.js';

/** Another requirement. */
export class LinkedRequirementDto {
  id!: string;
  code!: string;
}

/** A recurring or one-time duty, one revision of it. */
export class RequirementDto {
  id!: string;
  code!: string;
  title!: string;
  kind!:
    | 'inspection'
    | 'overhaul'
    | 'directive'
    | 'bulletin'
    | 'discard'
    | 'check'
    | 'airworthiness-limitation';
  document!: string;
  revision!: string;
  anchor!: 'airframe' | 'position' | 'engine' | 'part';
  airframeTypeId!: string | null;
  /** Maker and designation of the type of airframe. */
  airframeType!: string | null;
  positionNumber!: number | null;
  engineModelId!: string | null;
  /** Maker and designation of the model. */
  engineModel!: string | null;
  partNumber!: string | null;
  /** Null: the first time is due after the repeat. */
  threshold!: GrantedDto | null;
  /** Null: it is met once. */
  repeat!: GrantedDto | null;
  combine!: 'first' | 'last';
  monthRule!: 'same-day' | 'month-end';
  countedFrom!: 'new' | 'overhaul' | 'shop-visit' | 'installation' | 'accomplishment' | 'effective' | 'date';
  fromOn!: string | null;
  effectiveOn!: string;
  /** Null: planned times shift with every accomplishment. */
  window!: GrantedWindowDto | null;
  /** How far one due may be varied by an approval; null: not at all. */
  variation!: GrantedTiersDto | null;
  /** Where its own text grants the window or variation. */
  grantedBy!: string | null;
  rebase!: RebasedDto;
  serialFrom!: string | null;
  serialTo!: string | null;
  /** Only for those on which all of these codes are accomplished. */
  onlyWith!: string[];
  /** Not for those on which one of these codes is accomplished. */
  unlessWith!: string[];
  /** The requirement of another code whose place it takes. */
  supersedes!: LinkedRequirementDto | null;
  /** The requirement in force that takes the place of this code. */
  supersededBy!: LinkedRequirementDto | null;
  /** The requirement of another code that it ends, where it is accomplished. */
  terminates!: LinkedRequirementDto | null;
  credit!: 'none' | 'revisions' | 'superseded';
  mandatory!: boolean;
  /** Whether its applicability must be assessed: of a directive, and of a mandatory bulletin. */
  needsAssessment!: boolean;
  /** Whether it is the newest revision of its code, and not voided. */
  inForce!: boolean;
  /** How many airframes, positions or components it is due on, or not verified. */
  open!: number;
  voided!: boolean;
  voidReason!: string | null;
}
