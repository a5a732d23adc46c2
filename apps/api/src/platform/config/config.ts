/** What the surroundings decide. The only place that reads the environment. */
export class Config {
  private constructor(
    readonly port: number,
    readonly host: string,
    /** The connection string of the role `app`, which owns nothing. */
    readonly databaseUrl: string,
    /** Folder of the built client; null when the API is served alone. */
    readonly webDist: string | null,
    /** The address people see, without a path. */
    readonly publicOrigin: string,
    /** True unless people come over plain http on this very machine. */
    readonly secure: boolean,
    readonly poolSize: number,
  ) {}

  /**
   * The configuration in `env`; what is unset takes its default.
   * Errors: Error naming the variable, when a value cannot be meant.
   */
  static from(env: Readonly<Record<string, string | undefined>> = process.env): Config {
    const host = env['HOST'] || '127.0.0.1';
    const port = wholeNumber('PORT', env['PORT'], 3000, 0, 65535);
    const origin = new URL(
      env['PUBLIC_ORIGIN'] || `http://${host.includes(':') ? `[${host}]` : host}:${port}`,
    );
    if (origin.protocol !== 'http:' && origin.protocol !== 'https:') {
      throw new Error('PUBLIC_ORIGIN must begin with http:// or https://');
    }
    return new Config(
      port,
      host,
      env['DATABASE_URL'] ?? '',
      env['WEB_DIST'] || null,
      origin.origin,
      origin.protocol === 'https:' || !isLoopback(origin.hostname),
      wholeNumber('DATABASE_POOL', env['DATABASE_POOL'], 16, 2, 200),
    );
  }

  /** What making the first operator needs. Errors: Error naming what is unset. */
  static forBootstrap(env: Readonly<Record<string, string | undefined>> = process.env) {
    const { OWNER_DATABASE_URL: ownerDatabaseUrl, BOOTSTRAP_JSON: bootstrapJson } = env;
    if (!ownerDatabaseUrl || !bootstrapJson)
      throw new Error('OWNER_DATABASE_URL and BOOTSTRAP_JSON must be set');
    return { ownerDatabaseUrl, bootstrapJson };
  }
}

function isLoopback(name: string): boolean {
  return name === 'localhost' || name === '[::1]' || /^127\.\d+\.\d+\.\d+$/.test(name);
}

function wholeNumber(
  name: string,
  text: string | undefined,
  otherwise: number,
  least: number,
  most: number,
): number {
  if (text === undefined || text === '') return otherwise;
  const value = Number(text);
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  throw new Error(`${name} must be a whole number from ${least} to ${most}`);
}
