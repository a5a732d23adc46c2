import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayToWire } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import { readTool, WITH_CALIBRATIONS } from './read-tool.js';
import type { NewToolDto, ToolDto, ToolViewDto } from './tool.dto.js';
import { toolToWire } from './tool.mapper.js';
import { refuseUnlikeTool } from './tool-rules.js';

/** The register of tools that are calibrated. */
@Injectable()
export class ToolsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly clock: Clock,
  ) {}

  /** All tools, by serial number. */
  list(actor: Actor): Promise<ToolDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const rows = await tx.tool.findMany({
        where: { operatorId },
        include: WITH_CALIBRATIONS,
        orderBy: { serialNumber: 'asc' },
      });
      return rows.map((row) => toolToWire(row, dayToWire(this.clock.now())));
    });
  }

  /** One tool. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<ToolViewDto> {
    return this.database.inOperator(actor, (tx) =>
      readTool(tx, actor.operatorId, { id, on: dayToWire(this.clock.now()) }),
    );
  }

  /** Registers a tool. Refuses: INVALID_FIELDS, ALREADY_EXISTS. */
  add(actor: Actor, act: ActRequest, asked: NewToolDto): Promise<ToolViewDto> {
    const { operatorId } = actor;
    const { serialNumber, description, kind } = asked;
    refuseUnlikeTool(asked);
    return this.acts.perform(actor, act, async (tx) => {
      const same = await tx.tool.findFirst({ where: { operatorId, serialNumber }, select: { id: true } });
      if (same !== null)
        refuse({
          code: 'ALREADY_EXISTS',
          what: 'a tool with the serial number',
          field: 'serialNumber',
          value: serialNumber,
        });
      const number = await this.journal.number(tx);
      const id = newId();
      const limits = {
        unit: asked.unit ?? null,
        rangeLow: asked.rangeLow ?? null,
        rangeHigh: asked.rangeHigh ?? null,
        deviation: asked.deviation ?? null,
      };
      await tx.tool.create({ data: { operatorId, id, serialNumber, description, kind, ...limits } });
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'tool-added',
        body: { serialNumber, description, kind, ...limits },
        about: [id],
        key: act.key,
      });
      const body = await readTool(tx, operatorId, { id, on: dayToWire(this.clock.now()) });
      return { status: 201, body, number, version: body.version, resource: `/api/tools/${id}` };
    });
  }
}
