import { AccomplishmentDto, AssessmentDto, VariationDto } from './met-view.dto.js';
import { RequirementStatusDto } from './requirement-status.dto.js';
import { RequirementDto } from './requirement-view.dto.js';

/** A requirement, what it is held against, and when it was met. */
export class RequirementViewDto {
  requirement!: RequirementDto;
  /** The most pressing first; none unless it is in force. */
  statuses!: RequirementStatusDto[];
  /** Of all revisions of its code, the latest first. */
  accomplishments!: AccomplishmentDto[];
  /** Of all revisions of its code, the latest first. */
  assessments!: AssessmentDto[];
  /** Of all revisions of its code, the latest first. */
  variations!: VariationDto[];
  /** All revisions of its code, the newest first. */
  revisions!: RequirementDto[];
}
