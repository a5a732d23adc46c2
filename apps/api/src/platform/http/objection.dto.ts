import type { Objection } from '@strutbook/domain/release/objection.js';
import { objectionText } from '@strutbook/domain/release/objection-text.js';

/** What an objection is about. */
export class ObjectionSubjectDto {
  kind!: string;
  id!: string;
  /** In words: the part and where it is. */
  label!: string;
}

/** Something held against a release or a fact, with its record, its reason and what would answer it. */
export class ObjectionDto {
  code!: string;
  severity!: 'blocking' | 'advisory';
  positionNumber!: number | null;
  subject!: ObjectionSubjectDto;
  reason!: string;
  fix!: string;
}

/** An objection in words. Total. */
export function toObjection(objection: Objection): ObjectionDto {
  const { code, severity, positionNumber, record } = objection;
  const text = objectionText(objection);
  return {
    code,
    severity,
    positionNumber,
    subject: { ...record, label: text.record },
    reason: text.reason,
    fix: text.fix,
  };
}
