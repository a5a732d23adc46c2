import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { refuseWeakPassword } from '../../platform/access/password-rules.js';
import { Passwords } from '../../platform/access/passwords.js';
import { Sessions } from '../../platform/access/sessions.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { requireVersion } from '../../platform/http/if-match.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import type { NewPersonDto, PeopleDto, PersonDto } from './people.dto.js';
import { toPersonDto } from './people.mapper.js';

/** What never leaves the database but to be compared. */
const SECRETS = { passwordHash: true, pinHash: true } as const;

/** Who may sign in, and as what. */
@Injectable()
export class PeopleService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly passwords: Passwords,
    private readonly sessions: Sessions,
    private readonly clock: Clock,
  ) {}

  /** Everyone of the operator, in order of name. */
  async list(actor: Actor): Promise<PeopleDto> {
    const people = await this.database.inOperator(actor, (tx) =>
      tx.person.findMany({
        where: { operatorId: actor.operatorId },
        omit: SECRETS,
        orderBy: [{ fullName: 'asc' }, { id: 'asc' }],
      }),
    );
    return { rows: people.map(toPersonDto) };
  }

  /** Adds a person. Refuses: PASSWORD_TOO_WEAK, ALREADY_EXISTS. */
  async add(actor: Actor, act: ActRequest, person: NewPersonDto): Promise<PersonDto> {
    const { signInName, fullName, roles, password } = person;
    refuseWeakPassword(password, [signInName, fullName], 'password');
    const passwordHash = await this.passwords.hash(password);
    return await this.acts.perform(actor, act, async (tx) => {
      const { operatorId } = actor;
      const there = await tx.person.count({ where: { operatorId, signInName } });
      if (there > 0)
        refuse({
          code: 'ALREADY_EXISTS',
          what: 'someone with the sign-in name',
          field: 'signInName',
          value: signInName,
        });
      const licence = person.licence ?? null;
      const mustChangePassword = person.mustChangePassword ?? true;
      const made = await tx.person.create({
        data: {
          operatorId,
          id: newId(),
          signInName,
          fullName,
          roles,
          licence,
          passwordHash,
          mustChangePassword,
          createdAt: this.clock.now(),
        },
        omit: SECRETS,
      });
      const number = await this.journal.number(tx);
      const body = { signInName, fullName, roles, licence };
      await this.journal.append(tx, actor, {
        number,
        stream: made.id,
        kind: 'person-added',
        body,
        about: [],
        key: act.key,
      });
      return {
        status: 201,
        body: toPersonDto(made),
        resource: `/api/people/${made.id}`,
        version: made.version,
        number,
      };
    });
  }

  /** Shuts a person out and ends their sessions. Refuses: NOT_FOUND, STALE, WRONG_STATE, LAST_ADMINISTRATOR. */
  async disable(
    actor: Actor,
    act: ActRequest,
    { id, seen }: { readonly id: string; readonly seen: number },
  ): Promise<PersonDto> {
    return await this.acts.perform(actor, act, async (tx) => {
      const { operatorId } = actor;
      await lockAdministratorsAnd(tx, operatorId, id);
      const where = { operatorId_id: { operatorId, id } };
      const person = orNotFound(await tx.person.findUnique({ where }), 'person');
      requireVersion(person.version, seen, 'The person');
      if (person.disabledAt !== null)
        refuse({
          code: 'WRONG_STATE',
          what: 'the person',
          state: 'shut out already',
          needed: 'able to sign in',
        });
      const others = await tx.person.count({
        where: { operatorId, id: { not: id }, disabledAt: null, roles: { has: 'administrator' } },
      });
      if (others === 0) refuse({ code: 'LAST_ADMINISTRATOR' });
      const after = await tx.person.update({
        where,
        data: { disabledAt: this.clock.now(), version: { increment: 1 } },
        omit: SECRETS,
      });
      await this.sessions.endAllOf(tx, operatorId, id, null);
      const number = await this.journal.number(tx);
      const body = { signInName: after.signInName, fullName: after.fullName };
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'person-disabled',
        body,
        about: [],
        key: act.key,
      });
      return {
        status: 200,
        body: toPersonDto(after),
        resource: `/api/people/${id}`,
        version: after.version,
        number,
      };
    });
  }
}

/**
 * Of two administrators who shut each other out at once, the second waits and then sees the first. Not FOR UPDATE:
 * every act holds its own person's key, and two acts would wait for each other.
 */
async function lockAdministratorsAnd(tx: Tx, operatorId: number, id: string): Promise<void> {
  await tx.$queryRaw`SELECT id FROM person WHERE operator_id = ${operatorId}::int
    AND (id = ${id}::uuid OR 'administrator' = ANY (roles)) ORDER BY id FOR NO KEY UPDATE`;
}
