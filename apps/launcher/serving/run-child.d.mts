export function runChild(
  script: string,
  options: {
    readonly env?: Readonly<Record<string, string>>;
    readonly onLine?: (line: string) => void;
    readonly signal?: AbortSignal;
  },
): Promise<string[]>;
