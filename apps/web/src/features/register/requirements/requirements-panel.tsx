import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useMay } from '../../../server/authority.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { MetForm } from './met-form.js';
import {
  airframeRequirementsQuery,
  componentRequirementsQuery,
  type RequirementStatus,
} from './requirement-queries.js';
import { statusKey } from './requirement-words.js';
import { StatusTable } from './status-table.js';

interface RequirementsPanelProps {
  readonly of: { readonly airframeId: string } | { readonly componentId: string };
}

/** What is held against an airframe or a component, with all that hangs on it or is in it. */
export function RequirementsPanel({ of }: RequirementsPanelProps) {
  const airframe = 'airframeId' in of;
  const onAirframe = useQuery({
    ...airframeRequirementsQuery(airframe ? of.airframeId : ''),
    enabled: airframe,
  });
  const onComponent = useQuery({
    ...componentRequirementsQuery(airframe ? '' : of.componentId),
    enabled: !airframe,
  });
  const may = useMay('keep-records');
  const [met, setMet] = useState<RequirementStatus | null>(null);
  const query = airframe ? onAirframe : onComponent;
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
              <EmptyState>No requirement in force is for {airframe ? 'this airframe' : 'it'}.</EmptyState>
            }
          />
        )}
      </Answered>
      {met !== null && <MetForm key={statusKey(met)} row={met} onClose={() => setMet(null)} />}
    </div>
  );
}
