import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import type { NewTestCellDto, TestCellDto } from './ground-run.dto.js';

/** Places where engines run off the wing, each with one slot and its own clock. */
@Injectable()
export class TestCellsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
  ) {}

  /** All test cells with the engines in them, by name. */
  list(actor: Actor): Promise<TestCellDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const rows = await tx.testCell.findMany({
        where: { operatorId },
        orderBy: { name: 'asc' },
        include: {
          slotByTestCell: {
            include: {
              stayBySlot: {
                where: { voidedSeq: null, toAt: null },
                include: { component: { select: { id: true, serialNumber: true } } },
              },
            },
          },
        },
      });
      return rows.flatMap(({ id, name, slotByTestCell: [slot] }) =>
        slot === undefined
          ? []
          : [{ id, name, slotId: slot.id, engine: slot.stayBySlot[0]?.component ?? null }],
      );
    });
  }

  /** Adds a test cell with its slot and its clock. Refuses: ALREADY_EXISTS. */
  add(actor: Actor, act: ActRequest, { name }: NewTestCellDto): Promise<TestCellDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const same = await tx.testCell.findFirst({ where: { operatorId, name }, select: { id: true } });
      if (same !== null)
        refuse({ code: 'ALREADY_EXISTS', what: 'a test cell called', field: 'name', value: name });
      const number = await this.journal.number(tx);
      const [id, slotId] = [newId(), newId()];
      await tx.testCell.create({ data: { operatorId, id, name } });
      await tx.carrier.create({ data: { operatorId, id, kind: 'test-cell' } });
      await tx.slot.create({
        data: { operatorId, id: slotId, testCellId: id, kind: 'engine', name: 'Engine' },
      });
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'test-cell-added',
        body: { name, slotId },
        about: [id],
        key: act.key,
      });
      const body: TestCellDto = { id, name, slotId, engine: null };
      return { status: 201, body, number, resource: `/api/test-cells/${id}` };
    });
  }
}
