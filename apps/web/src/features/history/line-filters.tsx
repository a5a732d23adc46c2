import { useState } from 'react';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import type { HistoryLine } from './history-data.js';
import { GATHERED, type LineFilter, occurring, withPart, yearOf } from './line-filter.js';

interface LineFiltersProps {
  readonly lines: readonly HistoryLine[];
  readonly filter: LineFilter;
  readonly onFilter: (next: LineFilter) => void;
}

function inOrder({ order: _, ...rest }: LineFilter, oldest: boolean): LineFilter {
  return oldest ? { ...rest, order: 'oldest' } : rest;
}

/** Kind, year, order and a word to find; all stand in the address. */
export function LineFilters({ lines, filter, onFilter }: LineFiltersProps) {
  // What is typed shows at once; the address follows.
  const [find, setFind] = useState(filter.find ?? '');
  const kinds = occurring(lines.map(({ title }) => title));
  const years = occurring(lines.map(yearOf)).toReversed();
  const choices = (found: ReturnType<typeof occurring>) =>
    found.map(({ value, count }) => ({ value, label: `${value} (${count})` }));
  return (
    <search className="line-filters no-print">
      <SelectField
        label="Kind"
        className="field-short"
        unchosen="All kinds"
        options={[...(lines.some(({ work }) => work !== null) ? GATHERED : []), ...choices(kinds)]}
        value={filter.kind ?? ''}
        onChange={(event) => onFilter(withPart(filter, 'kind', event.target.value))}
      />
      <SelectField
        label="Year"
        className="field-short"
        unchosen="All years"
        options={choices(years)}
        value={filter.year ?? ''}
        onChange={(event) => onFilter(withPart(filter, 'year', event.target.value))}
      />
      <SelectField
        label="Order"
        className="field-short"
        options={[
          { value: '', label: 'Newest first' },
          { value: 'oldest', label: 'Oldest first' },
        ]}
        value={filter.order ?? ''}
        onChange={(event) => onFilter(inOrder(filter, event.target.value === 'oldest'))}
      />
      <TextField
        label="Find"
        type="search"
        className="field-short"
        value={find}
        onChange={(event) => {
          setFind(event.target.value);
          onFilter(withPart(filter, 'find', event.target.value));
        }}
      />
    </search>
  );
}
