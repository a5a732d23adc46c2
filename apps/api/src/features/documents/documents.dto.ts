import { IsIn, IsUUID } from 'class-validator';

/** Which document to prepare. */
export class NewDocumentDto {
  @IsIn(['history', 'release-certificate'])
  kind!: 'history' | 'release-certificate';

  /** A history is of an airframe or a component, a certificate of a release. */
  @IsIn(['airframe', 'component', 'release'])
  subjectKind!: 'airframe' | 'component' | 'release';

  @IsUUID()
  subjectId!: string;
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
