import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { requirementsOnQuery } from '../../../../server/requirements.js';
import { RouteLink } from '../../../../ui/actions/route-link.js';
import { CheckField } from '../../../../ui/fields/check-field.js';
import { Answered } from '../../../../ui/messages/answered.js';
import { EmptyState } from '../../../../ui/messages/empty-state.js';
import { AskedAct, useHeldActs } from './held-acts.js';
import { StatusTable } from './status-table.js';

interface RequirementsPanelProps {
  readonly on: { readonly kind: 'airframe' | 'component'; readonly id: string };
}

/** What is held against an airframe or a component, with all that hangs on it or is in it. */
export function RequirementsPanel({ on }: RequirementsPanelProps) {
  const [notApplicable, setNotApplicable] = useState(false);
  const query = useQuery({
    ...requirementsOnQuery({ ...on, notApplicable }),
    placeholderData: keepPreviousData,
  });
  const acts = useHeldActs();
  // The page above says already that there is no such thing.
  if (query.error instanceof ProblemError && query.error.status === 404) return null;
  return (
    <div className="stack">
      <h2 className="section-heading">Requirements</h2>
      <div className="row no-print">
        <CheckField
          label="With what does not apply, and why"
          checked={notApplicable}
          onChange={({ target }) => setNotApplicable(target.checked)}
        />
        <RouteLink href={`/directives?${on.kind}=${on.id}`}>Directives and bulletins</RouteLink>
      </div>
      <Answered query={query} doing="Reading the requirements" lines={4}>
        {(rows) => (
          <StatusTable
            caption="Requirements"
            rows={rows}
            acts={acts}
            empty={
              <EmptyState>
                No requirement in force is for {on.kind === 'airframe' ? 'this airframe' : 'it'}.
              </EmptyState>
            }
          />
        )}
      </Answered>
      <AskedAct acts={acts} />
    </div>
  );
}
