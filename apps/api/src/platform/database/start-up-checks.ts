import { Injectable } from '@nestjs/common';
import { Database } from './database.js';

interface Standing {
  readonly name: string;
  readonly superuser: boolean;
  readonly bypass: boolean;
  readonly owned: string | null;
}

/** Reasons not to serve: with any of them a promise of the records would not hold. */
@Injectable()
export class StartUpChecks {
  constructor(private readonly database: Database) {}

  /** Every reason against serving from this database as this role, in words; empty when there is none. */
  async reasonsAgainst(): Promise<string[]> {
    return [...(await this.settings()), ...(await this.role()), ...(await this.schema())];
  }

  private async settings(): Promise<string[]> {
    const rows = await this.database.headline<{ name: string; setting: string }>(
      `SELECT name, setting FROM pg_settings WHERE name IN ('fsync', 'full_page_writes', 'synchronous_commit')`,
    );
    return rows
      .filter(({ setting }) => setting === 'off')
      .map(
        ({ name }) =>
          `${name} is off: a crash could lose what was acknowledged. Turn it on in postgresql.conf.`,
      );
  }

  private async role(): Promise<string[]> {
    const [role] = await this.database.headline<Standing & Record<string, unknown>>(
      `SELECT r.rolname AS name, r.rolsuper AS superuser, r.rolbypassrls AS bypass,
        (SELECT c.relname FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
          WHERE n.nspname = 'public' AND c.relkind IN ('r', 'p') AND pg_has_role(r.oid, c.relowner, 'USAGE')
          ORDER BY c.relname LIMIT 1) AS owned
       FROM pg_roles r WHERE r.rolname = current_user`,
    );
    if (role === undefined) return ['the role of this connection is not known to the database'];
    const reasons: string[] = [];
    if (role.superuser)
      reasons.push(`the role ${role.name} is a superuser, whom no rule of the database binds`);
    else if (role.bypass) reasons.push(`the role ${role.name} may pass by row-level security (BYPASSRLS)`);
    else if (role.owned !== null)
      reasons.push(
        `the role ${role.name} owns tables (${role.owned} among them) and could change their rules`,
      );
    return reasons.map((reason) => `${reason}. Serve as the role app; see DATABASE_URL.`);
  }

  private async schema(): Promise<string[]> {
    const missing = await this.missing();
    return missing === null ? [] : [missing];
  }

  /** What the schema lacks, in words; null when the records can be read. */
  async missing(): Promise<string | null> {
    const [found] = await this.database.headline<{ table: boolean; sign_in: boolean; queue: boolean }>(
      `SELECT to_regclass('public.journal_entry') IS NOT NULL AS table,
        to_regprocedure('public.session_by_token(bytea)') IS NOT NULL AS sign_in,
        to_regclass('jobs_queue.jobs') IS NOT NULL AS queue`,
    );
    if (found?.table !== true || !found.sign_in)
      return 'the migrations are not applied. Run npm run db:migrate.';
    return found.queue ? null : 'the queue of background jobs is not set up. Run npm run db:migrate.';
  }
}
