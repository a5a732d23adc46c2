import { Injectable, type OnApplicationShutdown } from '@nestjs/common';
import { PrismaPg } from '@prisma/adapter-pg';
import pg from 'pg';
import { Config } from '../config/config.js';
import { RefusalError } from '../problems/refusal.error.js';
import { databaseRefusal, isWorthRepeating } from './database-refusal.js';
import { Prisma, PrismaClient } from './generated/client.js';

/** What a transaction offers: Prisma's models, and `$queryRaw` and `$executeRaw`. */
export type Tx = Prisma.TransactionClient;

export interface TransactionLimits {
  /** Longest time for one statement, in milliseconds; 15 s unless told. */
  readonly statementMs?: number;
  /** Longest time for the whole transaction, in milliseconds; 30 s unless told. */
  readonly wholeMs?: number;
}

const LOCK_MS = 2_000;
const STATEMENT_MS = 15_000;
const WHOLE_MS = 30_000;
const TRIES = 5;

/** The one way to the database; every row is seen through the operator of the transaction alone. */
@Injectable()
export class Database implements OnApplicationShutdown {
  private readonly pool: pg.Pool;
  private readonly prisma: PrismaClient;

  constructor(config: Config) {
    // Nothing connects before the first question, so that the contract can be written without a database.
    this.pool = new pg.Pool({
      connectionString: config.databaseUrl,
      max: config.poolSize,
      connectionTimeoutMillis: 5_000,
      idleTimeoutMillis: 60_000,
      application_name: 'strutbook api',
      lock_timeout: LOCK_MS,
      statement_timeout: STATEMENT_MS,
      idle_in_transaction_session_timeout: 60_000,
    });
    this.pool.on('error', () => {}); // a lost idle connection shows in the next question
    const adapter = new PrismaPg(this.pool, { statementNameGenerator: ({ sql }) => nameIfPlannedOnce(sql) });
    this.prisma = new PrismaClient({ adapter, errorFormat: 'minimal' });
  }

  /**
   * Runs `work` in one transaction that sees and writes the actor's operator alone, and commits it when
   * `work` resolves. Deadlocks and serialisation failures restart it whole, up to five times: nothing
   * outside the database may happen in it.
   * Throws: RefusalError for what the database's constraints and locks refuse.
   */
  async inOperator<T>(
    actor: { readonly operatorId: number },
    work: (tx: Tx) => Promise<T>,
    limits: TransactionLimits = {},
  ): Promise<T> {
    for (let attempt = 1; ; attempt += 1) {
      try {
        return await this.prisma.$transaction(
          async (tx) => {
            await enter(tx, actor.operatorId, limits);
            return await work(tx);
          },
          { maxWait: 10_000, timeout: limits.wholeMs ?? WHOLE_MS },
        );
      } catch (error) {
        if (attempt < TRIES && isWorthRepeating(error)) {
          await pause(Math.random() * 20 * 2 ** attempt);
          continue;
        }
        throw toRefusal(error);
      }
    }
  }

  /**
   * Rows of one statement on its own, for functions that set the operator themselves and for the three
   * questions of sign-in. Bigints come as text.
   * Throws: RefusalError for what the database refuses.
   */
  async headline<Row extends pg.QueryResultRow>(
    sql: string,
    values: readonly unknown[] = [],
  ): Promise<Row[]> {
    for (let attempt = 1; ; attempt += 1) {
      try {
        // Named by its text, so that each connection parses and plans it once.
        return (await this.pool.query<Row>({ name: statementName(sql), text: sql, values: [...values] }))
          .rows;
      } catch (error) {
        if (attempt < TRIES && isWorthRepeating(error)) {
          await pause(Math.random() * 20 * 2 ** attempt);
          continue;
        }
        throw toRefusal(error);
      }
    }
  }

  async onApplicationShutdown(): Promise<void> {
    await this.prisma.$disconnect();
    await this.pool.end();
  }
}

async function enter(tx: Tx, operatorId: number, { statementMs }: TransactionLimits): Promise<void> {
  const operator = String(operatorId);
  if (statementMs === undefined) {
    await tx.$queryRaw`SELECT set_config('app.operator_id', ${operator}, true)`;
  } else {
    await tx.$queryRaw`SELECT set_config('app.operator_id', ${operator}, true),
      set_config('statement_timeout', ${String(statementMs)}, true)`;
  }
}

/**
 * Put at the head of a large statement whose text never varies: each connection then parses and plans it once. Planning
 * one that joins ten tables takes as long as running it.
 */
const PLANNED_ONCE = '/* planned once */';

function nameIfPlannedOnce(sql: string): string {
  return sql.trimStart().startsWith(PLANNED_ONCE) ? statementName(sql) : '';
}

const names = new Map<string, string>();

function statementName(sql: string): string {
  const known = names.get(sql);
  if (known !== undefined) return known;
  const name = `headline_${names.size + 1}`;
  names.set(sql, name);
  return name;
}

function toRefusal(error: unknown): unknown {
  const refusal = databaseRefusal(error);
  return refusal === null ? error : new RefusalError(refusal, { cause: error });
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
