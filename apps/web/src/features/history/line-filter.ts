import type { HistoryLine } from './history-data.js';

/** Kinds that gather several titles: all that was done in packages, and all but the single steps. */
export const GATHERED = [
  { value: 'in-packages', label: 'All work in packages' },
  { value: 'without-steps', label: 'All but the single steps' },
] as const;

/** What is shown of a history. It stands in the page's address. */
export interface LineFilter {
  /** A line's title, or what gathers several. */
  readonly kind?: string;
  readonly year?: string;
  readonly find?: string;
  readonly order?: 'oldest';
}

export const yearOf = (line: HistoryLine): string => line.at.slice(0, 4);

function isOfKind({ title, work }: HistoryLine, kind: string | undefined): boolean {
  if (kind === undefined) return true;
  if (kind === 'in-packages') return work !== null;
  return kind === 'without-steps' ? (work?.stepId ?? null) === null : title === kind;
}

const wordsOf = ({ title, detail, placed, struck, entry }: HistoryLine): string =>
  [title, detail, placed ?? '', struck?.reason ?? '', struck?.by ?? '', entry.by, String(entry.number ?? '')]
    .join('\n')
    .toLowerCase();

/** The lines that the filter lets through, newest first unless asked otherwise. */
export function linesShown(lines: readonly HistoryLine[], filter: LineFilter): readonly HistoryLine[] {
  const wanted = (filter.find ?? '').trim().toLowerCase();
  const through = lines.filter(
    (line) =>
      isOfKind(line, filter.kind) &&
      (filter.year === undefined || yearOf(line) === filter.year) &&
      (wanted === '' || wordsOf(line).includes(wanted)),
  );
  return filter.order === 'oldest' ? through : through.toReversed();
}

/** Values with how often each occurs, by name. */
export function occurring(
  values: readonly string[],
): readonly { readonly value: string; readonly count: number }[] {
  const counts = new Map<string, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts]
    .map(([value, count]) => ({ value, count }))
    .sort((a, b) => a.value.localeCompare(b.value, 'en'));
}

export interface YearLines {
  readonly year: string;
  readonly lines: readonly HistoryLine[];
}

/** Lines in order, parted where the year changes. */
export function byYear(lines: readonly HistoryLine[]): readonly YearLines[] {
  const parts: { year: string; lines: HistoryLine[] }[] = [];
  for (const line of lines) {
    const last = parts.at(-1);
    if (last?.year === yearOf(line)) last.lines.push(line);
    else parts.push({ year: yearOf(line), lines: [line] });
  }
  return parts;
}

/** The filter with one part set, or left out when there is nothing to ask for. */
export function withPart(filter: LineFilter, part: 'kind' | 'year' | 'find', value: string): LineFilter {
  const { [part]: _, ...rest } = filter;
  return value === '' ? rest : { ...rest, [part]: value };
}
