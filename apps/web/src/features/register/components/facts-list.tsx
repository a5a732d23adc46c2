import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useMay } from '../../../server/authority.js';
import { COMPONENTS_KEY, factsQuery } from '../../../server/components.js';
import { FLEET_KEY } from '../../../server/fleet.js';
import { Button } from '../../../ui/actions/button.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { Voided } from '../../../ui/status/voided.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { type RecordedFact, voidFact } from '../openings/fact-acts.js';
import { VoidDialog } from '../void-dialog.js';
import { type ListedFact, listedFacts } from './component-facts.js';

const COLUMNS: readonly Column<ListedFact>[] = [
  { id: 'at', header: 'When, UTC', cell: ({ when }) => when },
  {
    id: 'what',
    header: 'What',
    cell: ({ what, voided, voidReason }) => (
      <>
        {what}
        {voided && <Voided reason={voidReason} />}
      </>
    ),
    namesRow: true,
  },
  { id: 'detail', header: 'Amount', cell: ({ detail }) => detail },
  { id: 'source', header: 'Source', cell: ({ source }) => source },
];

interface FactsListProps {
  readonly componentId: string;
  /** Told once something was voided, with what that did. */
  readonly onVoided: (what: string, done: RecordedFact) => void;
}

/** What a component came with: opening balances, ratings, overhauls, gaps, acceptances. */
export function FactsList({ componentId, onVoided }: FactsListProps) {
  const facts = useQuery(factsQuery(componentId));
  const may = useMay('keep-records');
  const [voiding, setVoiding] = useState<ListedFact | null>(null);
  const act: Column<ListedFact> = {
    id: 'void',
    header: 'Correct',
    cell: (fact) =>
      fact.voided ? (
        ''
      ) : (
        <Button onClick={() => setVoiding(fact)} aria-label={`Void: ${fact.what}, ${fact.when}`}>
          Void
        </Button>
      ),
  };
  return (
    <>
      <Answered query={facts} doing="Reading what it came with">
        {(data) => (
          <DataTable
            caption="What it came with"
            captionHidden
            columns={may ? [...COLUMNS, act] : COLUMNS}
            rows={listedFacts(data)}
            rowKey={({ id }) => id}
            struck={({ voided }) => voided}
            empty={
              <EmptyState>
                No opening balance is recorded. Until there is one, its counters begin at zero on the day it
                was made, or are not verified.
              </EmptyState>
            }
          />
        )}
      </Answered>
      {voiding !== null && (
        <VoidDialog
          id={voiding.id}
          what={`${voiding.what.toLowerCase()} (${voiding.when})`}
          consequence="It stays in sight, struck through, and counts no more from now on. Counters, lives and what is due are computed again."
          perform={voidFact(voiding.kind)}
          refresh={[COMPONENTS_KEY, FLEET_KEY, ['openings'], ['history'], ['due']]}
          onDone={(done) => onVoided(`${voiding.what} voided`, done)}
          onClose={() => setVoiding(null)}
        />
      )}
    </>
  );
}
