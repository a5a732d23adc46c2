import { calendarDate } from '../../../format/utc-date.js';
import { Button } from '../../../ui/actions/button.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { Voided } from '../../../ui/status/voided.js';
import type { Column } from '../../../ui/table/column.js';
import type { Authorisation } from './authorisation-data.js';
import { isLive, lookOf, scopeRank, scopeWord, typeText, untilText } from './authorisation-words.js';

const STANDINGS = ['ends-soon', 'in-force', 'to-come', 'ended', 'voided'];

const PERSON: Column<Authorisation> = {
  id: 'person',
  header: 'Name',
  cell: ({ personName }) => personName,
  sortBy: ({ personName, scope }) => `${personName} ${scopeRank(scope)}`,
  namesRow: true,
};

/** What is said of each authorisation, whoever holds it. */
export const FACT_COLUMNS: readonly Column<Authorisation>[] = [
  {
    id: 'scope',
    header: 'May sign',
    cell: ({ scope, voided, voidReason }) => (
      <>
        {scopeWord(scope)}
        {voided && <Voided reason={voidReason} reasonOnly />}
      </>
    ),
    sortBy: ({ scope }) => scopeRank(scope),
  },
  { id: 'type', header: 'On', cell: typeText, sortBy: typeText },
  {
    id: 'standing',
    header: 'Today',
    cell: (entry) => {
      const { status, word } = lookOf(entry);
      return <StatusMark status={status} word={word} />;
    },
    sortBy: ({ standing }) => STANDINGS.indexOf(standing),
  },
  {
    id: 'from',
    header: 'First day',
    cell: ({ fromOn }) => calendarDate(fromOn),
    sortBy: ({ fromOn }) => fromOn,
  },
  { id: 'to', header: 'Last day', cell: untilText, sortBy: ({ toOn }) => toOn },
  { id: 'reference', header: 'Rests on', cell: ({ reference }) => reference },
];

/** All of it, with the act of ending for who may. */
export const listColumns = (
  onEnd: ((entry: Authorisation) => void) | null,
): readonly Column<Authorisation>[] => [
  PERSON,
  ...FACT_COLUMNS,
  ...(onEnd === null
    ? []
    : [
        {
          id: 'act',
          header: 'Act',
          cell: (entry: Authorisation) =>
            isLive(entry) ? (
              <Button
                kind="quiet"
                aria-label={`End ${scopeWord(entry.scope).toLowerCase()} of ${entry.personName}`}
                onClick={() => onEnd(entry)}
              >
                End
              </Button>
            ) : null,
        },
      ]),
];
