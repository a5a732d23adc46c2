import { useParams, useSearch } from '@tanstack/react-router';
import { DuePanel } from '../../features/due-list/due-panel.js';
import { FlownOver } from '../../features/overruns/flown-over.js';
import { AirframePage } from '../../features/positions/airframe-page.js';
import { RequirementsPanel } from '../../features/register/requirements/held/requirements-panel.js';

/** An airframe with what stands at its positions and, as it is now, what is held against it. */
export function AirframeRoute() {
  const { airframeId } = useParams({ from: '/signed-in/positions/$airframeId' });
  const { at } = useSearch({ from: '/signed-in/positions/$airframeId' });
  return (
    <>
      <AirframePage />
      {at === undefined && (
        <>
          <FlownOver key={`over ${airframeId}`} of={{ kind: 'airframe', id: airframeId }} />
          <DuePanel key={`due ${airframeId}`} on={{ kind: 'airframe', id: airframeId }} />
          <RequirementsPanel key={airframeId} on={{ kind: 'airframe', id: airframeId }} />
        </>
      )}
    </>
  );
}
