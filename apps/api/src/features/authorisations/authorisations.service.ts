import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts, type Done } from '../../platform/http/acts.js';
import { dayOf, dayToWire } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import type { AuthorisationDto, AuthorisationsQueryDto, NewAuthorisationDto } from './authorisation.dto.js';
import { authorisationToWire, WITH_NAMES } from './authorisation.mapper.js';
import {
  lockAuthorisation,
  lockPerson,
  refuseEndBeforeStart,
  refuseLonger,
  refuseSame,
} from './authorisation-rules.js';

/** Who may sign what. */
@Injectable()
export class AuthorisationsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly clock: Clock,
  ) {}

  /** Authorisations by person, scope and start, the newest first; ended and voided ones too. */
  list(actor: Actor, { personId }: AuthorisationsQueryDto): Promise<AuthorisationDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const rows = await tx.authorisation.findMany({
        where: { operatorId, ...(personId === undefined ? {} : { personId }) },
        include: WITH_NAMES,
        orderBy: [{ person: { fullName: 'asc' } }, { scope: 'asc' }, { fromOn: 'desc' }, { id: 'desc' }],
      });
      return rows.map((row) => authorisationToWire(row, this.today()));
    });
  }

  /** Lets a person sign. Refuses: INVALID_FIELDS, NOT_FOUND, WRONG_STATE, ALREADY_EXISTS. */
  add(actor: Actor, act: ActRequest, asked: NewAuthorisationDto): Promise<AuthorisationDto> {
    const { operatorId } = actor;
    const { personId, scope, reference } = asked;
    const [airframeTypeId, toOn] = [asked.airframeTypeId ?? null, asked.toOn ?? null];
    refuseEndBeforeStart(asked.fromOn, toOn, 'toOn');
    return this.acts.perform(actor, act, async (tx) => {
      await lockPerson(tx, operatorId, personId, { mustBeIn: true });
      const airframeType = await typeName(tx, operatorId, airframeTypeId);
      const fromOn = dayOf(asked.fromOn);
      await refuseSame(tx, operatorId, { personId, scope, airframeTypeId, fromOn });
      const number = await this.journal.number(tx);
      const id = newId();
      await tx.authorisation.create({
        data: {
          ...{ operatorId, id, personId, scope, airframeTypeId, fromOn, reference, recordedSeq: number },
          toOn: toOn === null ? null : dayOf(toOn),
        },
      });
      await this.journal.append(tx, actor, {
        number,
        stream: personId,
        kind: 'authorisation-recorded',
        body: { id, scope, airframeTypeId, airframeType, fromOn: asked.fromOn, toOn, reference },
        about: [personId, id],
        key: act.key,
      });
      return this.answer(tx, operatorId, { id, number, status: 201 });
    });
  }

  /**
   * Ends an authorisation with a day, which may be past: the row is voided, and one with that last day stands in its
   * place. Refuses: NOT_FOUND, ALREADY_VOIDED, INVALID_FIELDS.
   */
  end(
    actor: Actor,
    act: ActRequest,
    asked: { readonly id: string; readonly lastOn: string; readonly reason: string },
  ): Promise<AuthorisationDto> {
    const { operatorId } = actor;
    const { lastOn, reason } = asked;
    return this.acts.perform(actor, act, async (tx) => {
      const row = await lockAuthorisation(tx, operatorId, asked.id);
      refuseEndBeforeStart(dayToWire(row.fromOn), lastOn, 'lastOn');
      refuseLonger(row.toOn, lastOn);
      const number = await this.journal.number(tx);
      await tx.authorisation.updateMany({
        where: { operatorId, id: row.id },
        data: { voidedSeq: number, voidReason: `Ends with ${lastOn}: ${reason}` },
      });
      const id = newId();
      const toOn = dayOf(lastOn);
      await tx.authorisation.create({ data: { ...row, id, toOn, recordedSeq: number } });
      await this.journal.append(tx, actor, {
        number,
        stream: row.personId,
        kind: 'authorisation-ended',
        body: { id: row.id, inItsPlace: id, scope: row.scope, lastOn, reason },
        about: [row.personId, row.id, id],
        key: act.key,
      });
      return this.answer(tx, operatorId, { id, number, status: 201 });
    });
  }

  /** Voids an authorisation that was recorded wrongly; it counts no more from now on. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<AuthorisationDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const { personId, scope } = await lockAuthorisation(tx, operatorId, id);
      const number = await this.journal.number(tx);
      await tx.authorisation.updateMany({
        where: { operatorId, id },
        data: { voidedSeq: number, voidReason: reason },
      });
      await this.journal.append(tx, actor, {
        number,
        stream: personId,
        kind: 'authorisation-voided',
        body: { id, scope, reason },
        about: [personId, id],
        key: act.key,
      });
      return this.answer(tx, operatorId, { id, number, status: 200 });
    });
  }

  private async answer(
    tx: Tx,
    operatorId: number,
    { id, number, status }: { readonly id: string; readonly number: bigint; readonly status: number },
  ): Promise<Done<AuthorisationDto>> {
    const row = await tx.authorisation.findUniqueOrThrow({
      where: { operatorId_id: { operatorId, id } },
      include: WITH_NAMES,
    });
    const resource = `/api/authorisations?personId=${row.personId}`;
    return { status, body: authorisationToWire(row, this.today()), number, resource };
  }

  private today(): string {
    return dayToWire(this.clock.now());
  }
}

async function typeName(tx: Tx, operatorId: number, id: string | null): Promise<string | null> {
  if (id === null) return null;
  const row = await tx.airframeType.findUnique({ where: { operatorId_id: { operatorId, id } } });
  const { maker, designation } = orNotFound(row, 'type of airframe', 'airframeTypeId');
  return `${maker} ${designation}`;
}
