export interface Migration {
  readonly name: string;
  readonly text: string;
  readonly checksum: string;
}

export function readMigrations(folder?: string): Migration[];

export function migrate(adminUrl: string, options?: { readonly folder?: string }): Promise<string[]>;
