import type { Tx } from '../../platform/database/database.js';

/** A document that is finished. */
export interface FinishedDocument {
  readonly id: string;
  readonly kind: string;
  readonly subjectId: string;
  readonly fileName: string;
  readonly pages: number;
  readonly createdById: string;
  readonly createdAt: Date;
  readonly bytes: Uint8Array;
}

// A piece is sent in some milliseconds; all of a long document at once would hold up every other request.
const PIECE = 1 << 20;

/** Keeps a document with its hash, sent to the database piece by piece, in one transaction. */
export async function keepDocument(tx: Tx, operatorId: number, document: FinishedDocument): Promise<void> {
  const { id, kind, subjectId, fileName, pages, createdById, createdAt, bytes } = document;
  await tx.$executeRaw`CREATE TEMPORARY TABLE document_piece (place int, bytes bytea) ON COMMIT DROP`;
  for (let from = 0; from < bytes.length; from += PIECE)
    await tx.$executeRaw`INSERT INTO document_piece VALUES (${from}::int, ${bytes.slice(from, from + PIECE)}::bytea)`;
  await tx.$executeRaw`
    INSERT INTO document (operator_id, id, kind, subject_id, file_name, bytes, sha256, pages, created_by_id, created_at)
    SELECT ${operatorId}::int, ${id}::uuid, ${kind}, ${subjectId}::uuid, ${fileName}, whole.bytes, sha256(whole.bytes),
           ${pages}::int, ${createdById}::uuid, ${createdAt}::timestamptz
      FROM (SELECT string_agg(bytes, ''::bytea ORDER BY place) AS bytes FROM document_piece) AS whole`;
}
