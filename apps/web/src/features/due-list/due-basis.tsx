import { counted } from '../../format/counts.js';
import { hoursMinutes } from '../../format/hours.js';
import type { DueBasis } from '../../server/wire.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { changed, type DueSearch } from './due-search.js';

const BASES = [
  { value: 'average-30', label: 'Average of the last 30 days' },
  { value: 'average', label: 'Average of the last 90 days' },
  { value: 'average-365', label: 'Average of the last 365 days' },
  { value: 'rate', label: 'Planned rate' },
  { value: 'flights', label: 'Flights planned' },
];

interface DueBasisChoiceProps {
  readonly search: DueSearch;
  readonly onSearch: (next: DueSearch) => void;
}

/** By what dates are projected. */
export function DueBasisChoice({ search, onSearch }: DueBasisChoiceProps) {
  const value = `${search.basis ?? 'average'}${search.days === undefined ? '' : `-${search.days}`}`;
  const known = BASES.some((basis) => basis.value === value);
  const options = known
    ? BASES
    : [...BASES, { value, label: `Average of the last ${search.days ?? ''} days` }];
  return (
    <div className="due-basis no-print">
      <SelectField
        label="Projected by"
        value={value}
        options={options}
        onChange={({ target }) => {
          const [basis, days] = target.value.split('-');
          onSearch(changed(search, { basis: target.value === 'average' ? undefined : basis, days }));
        }}
      />
    </div>
  );
}

/** The basis in words, and its numbers for each airframe of the page. */
export function BasisStated({ basis }: { readonly basis: DueBasis }) {
  return (
    <div className="stack-small">
      <p>{basis.statement}</p>
      {basis.uses.length > 0 && (
        <details>
          <summary>What each airframe flies by it</summary>
          <ul className="due-uses">
            {basis.uses.map(({ airframeId, registration, minutes, flights, days }) => (
              <li key={airframeId}>
                <span className="serial">{registration}</span>: {hoursMinutes(minutes)} h and{' '}
                {counted(flights, 'flight')} in {counted(days, 'day')}
                {flights === 0 && basis.kind !== 'average' && ', as nothing is planned'}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
