import { Injectable, type PipeTransform } from '@nestjs/common';
import { validationPipe } from '../../platform/problems/validation.js';
import { NewImportDto } from './import.dto.js';

/** A file as it was sent: its bytes alone, or its text inside JSON with what it is. */
export interface SentFile {
  readonly content: Buffer;
  readonly kind: 'flights' | null;
  readonly fileName: string | null;
}

/** Reads the body of an import: text/csv as its bytes, JSON as NewImportDto. Refuses: INVALID_FIELDS. */
@Injectable()
export class ImportBodyPipe implements PipeTransform<unknown, Promise<SentFile>> {
  async transform(body: unknown): Promise<SentFile> {
    if (Buffer.isBuffer(body)) return { content: body, kind: null, fileName: null };
    const dto = (await validationPipe.transform(body ?? {}, {
      type: 'body',
      metatype: NewImportDto,
    })) as NewImportDto;
    return { content: Buffer.from(dto.content, 'utf8'), kind: dto.kind, fileName: dto.fileName };
  }
}
