import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { fromWire } from '../../platform/http/instants.js';
import { LifeSheets } from '../../records/lives/sheet/life-sheets.js';
import { sheetCsv } from '../../records/lives/sheet/sheet-csv.js';
import type { LifeSheetDto } from '../../records/lives/wire/life-sheet.dto.js';

/** The status sheet of life-limited parts, on the screen and as a file. */
@Injectable()
export class LifeStatusService {
  constructor(
    private readonly database: Database,
    private readonly sheets: LifeSheets,
  ) {}

  /** The sheet now, or as at an instant. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string, at: string | undefined): Promise<LifeSheetDto> {
    const when = at === undefined ? null : fromWire(at);
    return this.database.inOperator(actor, (tx) => this.sheets.of(tx, actor.operatorId, id, when));
  }

  /** The same as comma-separated text. Refuses: NOT_FOUND. */
  async csv(
    actor: Actor,
    id: string,
    at: string | undefined,
  ): Promise<{ readonly fileName: string; readonly text: string }> {
    const sheet = await this.get(actor, id, at);
    const plain = `life-status-${sheet.subject.serialNumber}-${sheet.at.slice(0, 10)}`;
    return { fileName: `${plain.replace(/[^A-Za-z0-9]+/g, '-')}.csv`, text: sheetCsv(sheet) };
  }
}
