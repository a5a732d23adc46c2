import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { airframesQuery } from '../../server/fleet.js';
import { Button } from '../../ui/actions/button.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { changed, type DueSearch, isFiltered, unfiltered } from './due-search.js';

const STATUSES = [
  { value: 'over,not-verified', label: 'Over limit or not verified' },
  { value: 'over', label: 'Over limit' },
  { value: 'in-tolerance', label: 'In tolerance' },
  { value: 'not-verified', label: 'Not verified' },
  { value: 'soon', label: 'Soon' },
  { value: 'soon,planned', label: 'Soon or plan' },
  { value: 'later', label: 'In limits' },
];

const KINDS = [
  { value: 'life-limit', label: 'Life limits' },
  { value: 'inspection', label: 'Inspections' },
  { value: 'overhaul', label: 'Overhauls' },
  { value: 'directive', label: 'Directives' },
  { value: 'bulletin', label: 'Bulletins' },
  { value: 'discard', label: 'Discards' },
  { value: 'check', label: 'Checks' },
  { value: 'airworthiness-limitation', label: 'Airworthiness limitations' },
  { value: 'counters', label: 'Unknown counters' },
];

interface DueFiltersProps {
  readonly search: DueSearch;
  readonly onSearch: (next: DueSearch) => void;
}

/** What the list is narrowed to. Nothing of it is remembered: it stands in the address alone. */
export function DueFilters({ search, onSearch }: DueFiltersProps) {
  const airframes = useQuery(airframesQuery).data ?? [];
  const chosen = airframes.find(({ id }) => id === search.airframe);
  const choose = (next: Partial<Record<keyof DueSearch, string | undefined>>) =>
    onSearch(changed(search, next));
  return (
    <div className="stack no-print">
      <div className="due-filters">
        {airframes.length > 1 && (
          <SelectField
            label="Airframe"
            unchosen="All airframes"
            value={search.airframe ?? ''}
            options={airframes.map(({ id, registration }) => ({ value: id, label: registration }))}
            onChange={({ target }) =>
              choose({ airframe: target.value, position: undefined, component: undefined })
            }
          />
        )}
        {chosen !== undefined && chosen.positions.length > 0 && (
          <SelectField
            label="Position"
            unchosen="The whole airframe"
            value={search.position ?? ''}
            options={chosen.positions.map(({ id, number, kind }) => ({
              value: id,
              label: kind === 'apu' ? 'APU' : `Position ${number}`,
            }))}
            onChange={({ target }) => choose({ position: target.value })}
          />
        )}
        <SelectField
          label="Status"
          unchosen="Every status"
          value={search.status ?? ''}
          options={STATUSES}
          onChange={({ target }) => choose({ status: target.value })}
        />
        <SelectField
          label="Kind"
          unchosen="Every kind"
          value={search.kind ?? ''}
          options={KINDS}
          onChange={({ target }) => choose({ kind: target.value })}
        />
      </div>
      <TypedFilters key={JSON.stringify(search)} search={search} onSearch={onSearch} />
    </div>
  );
}

const TYPED = ['find', 'part', 'hours', 'cycles', 'within'] as const;

function TypedFilters({ search, onSearch }: DueFiltersProps) {
  const [typed, setTyped] = useState<Partial<Record<(typeof TYPED)[number], string>>>({});
  const [faults, setFaults] = useState<Partial<Record<string, string>>>({});
  const of = (name: (typeof TYPED)[number]) => ({
    value: typed[name] ?? search[name] ?? '',
    error: faults[name],
    onChange: ({ target }: { readonly target: { readonly value: string } }) =>
      setTyped({ ...typed, [name]: target.value }),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const wrong = (['hours', 'cycles', 'within'] as const).filter(
      (name) => !/^\d*$/.test((typed[name] ?? search[name] ?? '').trim()),
    );
    setFaults(Object.fromEntries(wrong.map((name) => [name, 'Enter a whole number'])));
    if (wrong.length === 0)
      onSearch(changed(search, Object.fromEntries(TYPED.map((name) => [name, of(name).value.trim()]))));
  };
  return (
    <form className="due-filters" noValidate onSubmit={submit}>
      <TextField label="Find" type="search" hint="Serial, code, title, description" {...of('find')} />
      <TextField label="Part number" mono {...of('part')} />
      <TextField label="Within hours" inputMode="numeric" {...of('hours')} />
      <TextField label="Within cycles" inputMode="numeric" {...of('cycles')} />
      <TextField label="Within days" inputMode="numeric" {...of('within')} />
      <div className="due-apply">
        <Button type="submit">Apply</Button>
        {isFiltered(search) && <Button onClick={() => onSearch(unfiltered(search))}>Clear filters</Button>}
      </div>
    </form>
  );
}
