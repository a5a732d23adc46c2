export interface EmbeddedServer {
  readonly url: (database: string) => string;
  readonly pid: number;
  readonly port: number;
  readonly attached: boolean;
  readonly stop: () => Promise<void>;
}

export function startEmbedded(options: {
  readonly folder: string;
  readonly settings?: Readonly<Record<string, string>>;
}): Promise<EmbeddedServer>;
