import { createHash } from 'node:crypto';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { PICTURE_LIMIT_BYTES } from '../../platform/server/picture-body.js';

export type PhotoType = 'image/jpeg' | 'image/png' | 'image/webp';

/** A picture that was sent. */
export interface Photo {
  readonly fileName: string;
  readonly mediaType: PhotoType;
  readonly content: Buffer;
  readonly sha256: Buffer;
}

/** What a file of each kind begins with. Source: JFIF 1.02, PNG (RFC 2083, 12.11), WebP container (RFC 9649, 2.4). */
const BEGINNINGS: readonly { readonly type: PhotoType; readonly is: (bytes: Buffer) => boolean }[] = [
  { type: 'image/jpeg', is: (bytes) => bytes.subarray(0, 3).equals(Buffer.from([0xff, 0xd8, 0xff])) },
  {
    type: 'image/png',
    is: (bytes) => bytes.subarray(0, 8).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])),
  },
  {
    type: 'image/webp',
    is: (bytes) =>
      bytes.subarray(0, 4).toString('latin1') === 'RIFF' &&
      bytes.subarray(8, 12).toString('latin1') === 'WEBP',
  },
];

/** The picture in a request: what its bytes are counts, not what it is called. Refuses: INVALID_FIELDS, BODY_TOO_LARGE. */
export function photoOf(body: unknown, fileName: string): Photo {
  const content = Buffer.isBuffer(body) ? body : Buffer.alloc(0);
  if (content.length > PICTURE_LIMIT_BYTES) refuse({ code: 'BODY_TOO_LARGE' });
  const kind = BEGINNINGS.find(({ is }) => is(content));
  if (kind === undefined)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'body',
          reason:
            content.length === 0 ? 'There is no picture in the request.' : 'These bytes are no picture.',
          fix: 'Send a JPEG, PNG or WebP picture of at most 8 MiB as the body.',
        },
      ],
    });
  return { fileName, mediaType: kind.type, content, sha256: createHash('sha256').update(content).digest() };
}

/** Keeps the picture of an entry. */
export async function writePhoto(
  tx: Tx,
  operatorId: number,
  { entryId, photo, number }: { readonly entryId: string; readonly photo: Photo; readonly number: bigint },
): Promise<void> {
  await tx.stepPhoto.create({
    data: {
      operatorId,
      id: newId(),
      entryId,
      mediaType: photo.mediaType,
      sha256: new Uint8Array(photo.sha256),
      content: new Uint8Array(photo.content),
      recordedSeq: number,
    },
    select: { id: true },
  });
}
