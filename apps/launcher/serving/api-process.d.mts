export interface ApiProcess {
  readonly baseUrl: string;
  readonly port: number;
  readonly pid: number;
  readonly ended: Promise<{ code?: number | null; signal?: NodeJS.Signals | null; error?: Error }>;
  readonly stop: () => Promise<void>;
  readonly kill: (signal?: NodeJS.Signals) => Promise<void>;
}

export function startApiProcess(options: {
  readonly appUrl: string;
  readonly port?: number;
  readonly host?: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly onLine?: (line: string) => void;
}): Promise<ApiProcess>;
