import { useQuery } from '@tanstack/react-query';
import { counted } from '../../format/counts.js';
import type { DueTotals } from '../../server/wire.js';
import { Button } from '../../ui/actions/button.js';
import { dueTotalsQuery } from './due-queries.js';
import { askOf, type DueSearch } from './due-search.js';

type Counts = DueTotals['whole'];

const WORDS = [
  ['over', 'over limit'],
  ['inTolerance', 'in tolerance'],
  ['notVerified', 'not verified'],
  ['soon', 'soon'],
  ['planned', 'to plan'],
  ['later', 'in limits'],
] as const satisfies readonly (readonly [keyof Counts, string])[];

const PRESSING = ['over', 'inTolerance', 'notVerified'] as const;

/** '3 over limit, 2 not verified'; empty when none of them is left out. */
function leftOut(all: Counts, shown: Counts): string {
  return WORDS.filter(([status]) => PRESSING.some((pressing) => pressing === status))
    .map(([status, words]) => [all[status] - shown[status], words] as const)
    .filter(([count]) => count > 0)
    .map(([count, words]) => `${count} ${words}`)
    .join(', ');
}

interface DueTotalsLineProps {
  readonly search: DueSearch;
  readonly onSearch: (next: DueSearch) => void;
}

/** How many there are of each status, and what the filters leave out that is past or not verified, with one press to see it. */
export function DueTotalsLine({ search, onSearch }: DueTotalsLineProps) {
  const { data, error } = useQuery(dueTotalsQuery(askOf(search)));
  if (error !== null && data === undefined)
    return (
      <p className="due-chip" role="status">
        How many are over limit is not known: the totals could not be read.
      </p>
    );
  if (data === undefined) return null;
  const { whole, scope, shown } = data;
  const hidden = leftOut(scope, shown);
  const elsewhere = leftOut(whole, scope);
  const { airframe, position, component, basis, days } = search;
  const kept = { ...(basis === undefined ? {} : { basis }), ...(days === undefined ? {} : { days }) };
  const of = {
    ...(airframe === undefined ? {} : { airframe }),
    ...(position === undefined ? {} : { position }),
    ...(component === undefined ? {} : { component }),
  };
  return (
    <>
      <p role="status">
        {counted(shown.total, 'item')}
        {WORDS.filter(([status]) => shown[status] > 0).map(
          ([status, words]) => `, ${shown[status]} ${words}`,
        )}
      </p>
      {hidden !== '' && (
        <div className="row due-hidden" role="status">
          <p className="due-chip">Left out by the filters: {hidden}</p>
          <Button onClick={() => onSearch({ ...of, ...kept, status: 'over,in-tolerance,not-verified' })}>
            Show them
          </Button>
        </div>
      )}
      {elsewhere !== '' && (
        <div className="row due-hidden" role="status">
          <p className="due-chip">Elsewhere in the fleet: {elsewhere}</p>
          <Button onClick={() => onSearch({ ...kept, status: 'over,in-tolerance,not-verified' })}>
            Show the fleet’s
          </Button>
        </div>
      )}
    </>
  );
}
