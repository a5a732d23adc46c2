import { ConsequencesDto } from '../../records/consequences/consequences.dto.js';

/** A fact that no longer counts. */
export class VoidedFactDto {
  id!: string;
  componentId!: string;
  voided!: boolean;
  voidReason!: string | null;
  consequences!: ConsequencesDto;
}
