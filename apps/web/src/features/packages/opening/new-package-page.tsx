import { useQuery } from '@tanstack/react-query';
import { useSearch } from '@tanstack/react-router';
import { holderWords, useMay } from '../../../server/authority.js';
import { airframesQuery } from '../../../server/fleet.js';
import { ActionLink } from '../../../ui/actions/action-link.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { PageHeading } from '../../../ui/page/page-heading.js';
import { EMPTY_ORDER } from '../order/order-draft.js';
import { EMPTY_OPENING, type OpeningDraft } from './opening-draft.js';
import { OpeningForm } from './opening-form.js';
import '../packages.css';
import './opening.css';

/** What the address says already. */
function useStart(): OpeningDraft {
  const search = useSearch({ from: '/signed-in/packages/new' });
  const { kind = '', airframe, component, position, slot, requirement } = search;
  const duty = {
    ...(component === undefined ? {} : { componentId: component }),
    ...(component !== undefined || airframe === undefined ? {} : { airframeId: airframe }),
  };
  return {
    ...EMPTY_OPENING,
    kind,
    subject: component === undefined ? 'airframe' : 'component',
    airframeId: airframe ?? '',
    componentId: component ?? '',
    order: { ...EMPTY_ORDER, positionNumber: position ?? '', slot: slot ?? 'engine' },
    duties: requirement === undefined ? [] : [{ requirementId: requirement, ...duty }],
  };
}

/** Opens a package: what is to be done, on what, by which steps. */
export function NewPackagePage() {
  const start = useStart();
  const may = useMay('open-a-package');
  const mayLog = useMay('log-a-change');
  const airframes = useQuery(airframesQuery);
  return (
    <>
      <PageHeading
        title="Open a package"
        below={<p>Work that is about to be done, by steps that are signed one by one</p>}
        actions={
          <>
            {mayLog && <ActionLink href="/changes/new">Log a past change</ActionLink>}
            <ActionLink href="/work">Back to Work</ActionLink>
          </>
        }
      />
      {may ? (
        <Answered query={airframes} doing="Reading the airframes" lines={6}>
          {(rows) =>
            rows.length === 0 ? (
              <EmptyState action={<ActionLink href="/register">Open the register</ActionLink>}>
                No airframe is recorded. Enter the airframe and its engines in the register first.
              </EmptyState>
            ) : (
              <OpeningForm start={start} />
            )
          }
        </Answered>
      ) : (
        <section className="panel">
          <h2>You may not open a package</h2>
          <p>It needs the authority of: {holderWords('open-a-package')}.</p>
        </section>
      )}
    </>
  );
}
