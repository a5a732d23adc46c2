/** A file read as a revision of a procedure, as far as this page looks into it. */
export interface RevisionFile {
  readonly code: string;
  readonly revision: string;
  readonly title: string;
  readonly steps: number;
  /** Sent as it is; the server is the judge. */
  readonly body: Readonly<Record<string, unknown>>;
}

export type ReadFile =
  | { readonly ok: true; readonly file: RevisionFile }
  | { readonly ok: false; readonly reason: string };

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const listIn = (value: unknown, name: string): readonly unknown[] => {
  const list = isObject(value) ? value[name] : undefined;
  return Array.isArray(list) ? list : [];
};

const textIn = (value: Readonly<Record<string, unknown>>, name: string): string =>
  typeof value[name] === 'string' ? value[name] : '';

/** Reads the text of a file. What is no JSON object is refused here; all else by the server. */
export function readRevision(text: string): ReadFile {
  let body: unknown;
  try {
    body = JSON.parse(text);
  } catch (error) {
    const where = error instanceof Error ? ` (${error.message})` : '';
    return { ok: false, reason: `The file is no JSON${where}. Export it again, or mend it` };
  }
  if (!isObject(body)) return { ok: false, reason: 'The file holds no procedure. Choose another' };
  return {
    ok: true,
    file: {
      code: textIn(body, 'code'),
      revision: textIn(body, 'revision'),
      title: textIn(body, 'title'),
      steps: listIn(body['content'], 'steps').length,
      body,
    },
  };
}

const NAMES: Readonly<Record<string, string>> = {
  steps: 'step',
  groups: 'group',
  items: 'item',
  captures: 'capture',
  rows: 'row',
  cautions: 'caution',
};

/** A path of the file in words: 'content.steps[3].captures[0].low' is 'Step 4, capture 1, low'. Total. */
export function placeText(path: string): string {
  const parts = path
    .replace(/^content\.?/, '')
    .split('.')
    .filter((part) => part !== '')
    .map((part) => {
      const match = /^(\w+)\[(\d+)\]$/.exec(part);
      if (match === null) return part;
      const [, list = '', place = ''] = match;
      return `${NAMES[list] ?? list} ${Number(place) + 1}`;
    });
  const text = parts.join(', ');
  return text === '' ? 'The file' : text.charAt(0).toUpperCase() + text.slice(1);
}
