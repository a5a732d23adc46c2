export function prepareDatabase(
  adminUrl: string,
  options?: { readonly appPassword?: string; readonly migrations?: string },
): Promise<string[]>;
