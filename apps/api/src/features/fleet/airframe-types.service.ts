import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import type { AirframeTypeDto, NewAirframeTypeDto } from './airframe-type.dto.js';
import { airframeTypeToWire } from './fleet.mapper.js';

/** Types of airframe, each with its positions. */
@Injectable()
export class AirframeTypesService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
  ) {}

  /** All types, by maker and designation. */
  list(actor: Actor): Promise<AirframeTypeDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const types = await tx.airframeType.findMany({
        where: { operatorId },
        include: { typePositionByAirframeType: { orderBy: { number: 'asc' } } },
        orderBy: [{ maker: 'asc' }, { designation: 'asc' }],
      });
      return types.map(airframeTypeToWire);
    });
  }

  /** Adds a type. Refuses: ALREADY_EXISTS, INVALID_FIELDS (positions that cannot be). */
  add(actor: Actor, act: ActRequest, asked: NewAirframeTypeDto): Promise<AirframeTypeDto> {
    const { operatorId } = actor;
    refusePositions(asked);
    return this.acts.perform(actor, act, async (tx) => {
      const { maker, designation } = asked;
      const same = await tx.airframeType.findFirst({
        where: { operatorId, maker, designation },
        select: { id: true },
      });
      if (same !== null)
        refuse({
          code: 'ALREADY_EXISTS',
          what: 'a type of this maker called',
          field: 'designation',
          value: designation,
        });
      const id = newId();
      const number = await this.journal.number(tx);
      const positions = [...asked.positions]
        .sort((a, b) => a.number - b.number)
        .map((position) => ({ ...position }));
      await tx.airframeType.create({ data: { operatorId, id, maker, designation } });
      await tx.typePosition.createMany({
        data: positions.map((position) => ({ operatorId, airframeTypeId: id, ...position })),
      });
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'airframe-type-added',
        body: { maker, designation, positions },
        about: [id],
        key: act.key,
      });
      const body: AirframeTypeDto = { id, maker, designation, version: 1, positions };
      return { status: 201, body, version: 1, number, resource: `/api/airframe-types/${id}` };
    });
  }
}

function refusePositions({ positions }: NewAirframeTypeDto): void {
  const seen = new Set<number>();
  for (const [index, { number, kind }] of positions.entries()) {
    const field = `positions[${index}].number`;
    if (seen.has(number)) {
      const fields = [
        {
          field,
          reason: `Two positions have the number ${number}.`,
          fix: 'Give each position a number of its own.',
        },
      ];
      refuse({ code: 'INVALID_FIELDS', fields });
    }
    if ((kind === 'apu') !== (number === 0)) {
      const fields = [
        {
          field,
          reason: 'The auxiliary power unit has the number 0, and only it.',
          fix: 'Number engines from 1, from the left outboard.',
        },
      ];
      refuse({ code: 'INVALID_FIELDS', fields });
    }
    seen.add(number);
  }
}
