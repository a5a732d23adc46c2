import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import type { LocationDto, NewLocationDto } from './location.dto.js';

/** Stores, shops and the other places a component can be when it is not installed. */
@Injectable()
export class LocationsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
  ) {}

  /** All locations, by name. */
  list(actor: Actor): Promise<LocationDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const rows = await tx.location.findMany({ where: { operatorId }, orderBy: { name: 'asc' } });
      return rows.map(({ id, name, kind }) => ({ id, name, kind: kind as LocationDto['kind'] }));
    });
  }

  /** Adds a location. Refuses: ALREADY_EXISTS. */
  add(actor: Actor, act: ActRequest, { name, kind }: NewLocationDto): Promise<LocationDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const same = await tx.location.findFirst({ where: { operatorId, name }, select: { id: true } });
      if (same !== null)
        refuse({ code: 'ALREADY_EXISTS', what: 'a location called', field: 'name', value: name });
      const number = await this.journal.number(tx);
      const id = newId();
      await tx.location.create({ data: { operatorId, id, name, kind } });
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'location-added',
        body: { name, kind },
        about: [id],
        key: act.key,
      });
      const body: LocationDto = { id, name, kind };
      return { status: 201, body, number, resource: `/api/locations/${id}` };
    });
  }
}
