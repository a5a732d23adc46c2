import { dataOrThrow } from '@strutbook/api-client/index.js';
import { api } from './api.js';

interface LooseAnswer {
  readonly data?: unknown;
  readonly error?: unknown;
  readonly response: Response;
}

interface LooseInit {
  readonly params?: {
    readonly path?: Readonly<Record<string, string>>;
    readonly query?: Readonly<Record<string, string | number | boolean>>;
  };
  readonly body?: unknown;
  /** For what is sent as it is, a picture. */
  readonly bodySerializer?: () => Blob;
  readonly headers?: Readonly<Record<string, string>>;
  readonly signal?: AbortSignal;
}

type Send = (path: string, init: LooseInit) => Promise<LooseAnswer>;

const loose = api as unknown as { readonly GET: Send; readonly POST: Send };

/** Reads a route that the generated contract does not know yet. Throws: ProblemError. */
export async function readLoose<Told>(path: string, init: LooseInit): Promise<Told> {
  return dataOrThrow(await loose.GET(path, init)) as Told;
}

/** Writes to one. Throws: ProblemError. */
export async function writeLoose<Told>(path: string, init: LooseInit): Promise<Told> {
  return dataOrThrow(await loose.POST(path, init)) as Told;
}
