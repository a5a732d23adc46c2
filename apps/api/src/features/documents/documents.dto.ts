import { IsIn, IsOptional, IsUUID } from 'class-validator';
import { IsInstantText } from '../../platform/http/field-forms.js';

/** Which document to prepare. */
export class NewDocumentDto {
  @IsIn(['history', 'release-certificate', 'life-status'])
  kind!: 'history' | 'release-certificate' | 'life-status';

  /** A history is of an airframe or a component, a certificate of a release, a status of lives of a component. */
  @IsIn(['airframe', 'component', 'release'])
  subjectKind!: 'airframe' | 'component' | 'release';

  @IsUUID()
  subjectId!: string;

  /** As at when, for a status of lives: 'YYYY-MM-DDTHH:MMZ', UTC; left out, it is now. */
  @IsOptional()
  @IsInstantText()
  at?: string;
}

/** The work that prepares a document; its result names the document. */
export class DocumentBegunDto {
  jobId!: string;
}

/** Whose documents. */
export class DocumentsQueryDto {
  @IsUUID()
  subjectId!: string;
}

/** A document that was prepared. */
export class DocumentDto {
  id!: string;
  kind!: string;
  subjectId!: string;
  fileName!: string;
  pages!: number;
  /** Of its bytes, in hexadecimal. */
  sha256!: string;
  createdAt!: string;
  /** Who had it prepared. */
  by!: string;
}
