import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useMay } from '../../../server/authority.js';
import { heldKey, type RequirementStatus, requirementsOnQuery } from '../../../server/requirements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { MetForm } from './met-form.js';
import { StatusTable } from './status-table.js';

interface RequirementsPanelProps {
  readonly on: { readonly kind: 'airframe' | 'component'; readonly id: string };
}

/** What is held against an airframe or a component, with all that hangs on it or is in it. */
export function RequirementsPanel({ on }: RequirementsPanelProps) {
  const query = useQuery(requirementsOnQuery(on));
  const may = useMay('keep-records');
  const [met, setMet] = useState<RequirementStatus | null>(null);
  // The page above says already that there is no such thing.
  if (query.error instanceof ProblemError && query.error.status === 404) return null;
  return (
    <div className="stack">
      <h2 className="section-heading">Requirements</h2>
      <Answered query={query} doing="Reading the requirements" lines={4}>
        {(rows) => (
          <StatusTable
            caption="Requirements"
            rows={rows}
            onMet={may ? setMet : undefined}
            empty={
              <EmptyState>
                No requirement in force is for {on.kind === 'airframe' ? 'this airframe' : 'it'}.
              </EmptyState>
            }
          />
        )}
      </Answered>
      {met !== null && <MetForm key={heldKey(met)} row={met} onClose={() => setMet(null)} />}
    </div>
  );
}
