import { Injectable } from '@nestjs/common';
import { Database } from '../database/database.js';
import type { Role } from './roles.js';

const MOST_NAMES = 5;

/** Who holds an authority, so that a refusal can say whom to ask. */
@Injectable()
export class Holders {
  constructor(private readonly database: Database) {}

  /** Full names of people who hold one of the roles and may sign in, at most five, in order of name. */
  async of(operatorId: number, roles: readonly Role[]): Promise<string[]> {
    if (roles.length === 0) return [];
    const people = await this.database.inOperator({ operatorId }, (tx) =>
      tx.person.findMany({
        where: { operatorId, disabledAt: null, roles: { hasSome: [...roles] } },
        orderBy: { fullName: 'asc' },
        take: MOST_NAMES,
        select: { fullName: true },
      }),
    );
    return people.map(({ fullName }) => fullName);
  }
}
