import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { Answered } from '../../ui/messages/answered.js';
import { Tabs } from '../../ui/overlay/tabs.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { BASIS_WORDS, resetText } from './counter-words.js';
import { type AskedMoment, type ExplainedCounter, explainedQuery } from './counters-data.js';
import { MomentBar } from './moment-bar.js';
import { SumTable } from './sum-table.js';
import './counters.css';

/** What of an address is the moment. */
function askedIn({ at, page, beforeFirst, afterLast, airframeId }: AskedMoment): AskedMoment {
  return {
    ...(at === undefined ? {} : { at }),
    ...(page === undefined ? {} : { page }),
    ...(beforeFirst === undefined ? {} : { beforeFirst }),
    ...(afterLast === undefined ? {} : { afterLast }),
    ...(airframeId === undefined ? {} : { airframeId }),
  };
}

function Sum({ counter, ownId }: { readonly counter: ExplainedCounter; readonly ownId: string }) {
  const { basis, addends, total } = counter;
  return (
    <div className="stack">
      <h2 className="section-heading">{BASIS_WORDS[basis]}: how we got this</h2>
      <p>{resetText(counter)}</p>
      <SumTable label={`${BASIS_WORDS[basis]}, line by line`} ownId={ownId} lines={addends} total={total} />
    </div>
  );
}

/** The counters of a component at any moment, each as a sum on paper. */
export function CountersPage() {
  const { componentId } = useParams({ from: '/signed-in/components/$componentId/counters' });
  const search = useSearch({ from: '/signed-in/components/$componentId/counters' });
  const navigate = useNavigate({ from: '/components/$componentId/counters' });
  const asked = askedIn(search);
  const query = useQuery(explainedQuery(componentId, asked));
  const { data } = query;
  const basis = search.basis ?? 'new';
  return (
    <div className="stack counters-page">
      <PageHeading
        title="Counters of"
        serial={data?.serialNumber}
        below={data && <p>{`${data.description}, part number ${data.partNumber}`}</p>}
        actions={
          <>
            <ActionLink href={`/components/${componentId}`}>Back to the component</ActionLink>
            <Button onClick={() => window.print()}>Print</Button>
          </>
        }
      />
      <MomentBar
        key={JSON.stringify(asked)}
        asked={asked}
        told={data?.moment}
        airframeKnown={false}
        onAsk={(next) => void navigate({ search: { ...next, basis } })}
      />
      <Answered query={query} doing="Reading the counters" lines={8}>
        {({ counters }) => (
          <Tabs
            label="Counters"
            parts={counters.map((counter) => ({
              id: counter.basis,
              title: BASIS_WORDS[counter.basis],
              content: <Sum counter={counter} ownId={componentId} />,
            }))}
            selected={counters.some((counter) => counter.basis === basis) ? basis : 'new'}
            onSelect={(next) =>
              void navigate({
                search: (before) => ({ ...before, basis: next }),
                replace: true,
                resetScroll: false,
              })
            }
          />
        )}
      </Answered>
    </div>
  );
}
