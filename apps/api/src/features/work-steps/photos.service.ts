import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';

const EXTENSIONS: Readonly<Record<string, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
};

/** A picture as it is sent out. */
export interface SentPhoto {
  readonly mediaType: string;
  readonly bytes: Uint8Array;
  readonly fileName: string;
}

/** Pictures of steps. */
@Injectable()
export class PhotosService {
  constructor(private readonly database: Database) {}

  /** The bytes of a picture. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<SentPhoto> {
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId: actor.operatorId, id } };
      const { mediaType, content } = orNotFound(await tx.stepPhoto.findUnique({ where }), 'picture');
      return { mediaType, bytes: content, fileName: `picture-${id}.${EXTENSIONS[mediaType] ?? 'bin'}` };
    });
  }
}
