import { useParams, useSearch } from '@tanstack/react-router';
import { AirframePage } from '../../features/positions/airframe-page.js';
import { RequirementsPanel } from '../../features/register/requirements/requirements-panel.js';

/** An airframe with what stands at its positions and, as it is now, what is held against it. */
export function AirframeRoute() {
  const { airframeId } = useParams({ from: '/signed-in/positions/$airframeId' });
  const { at } = useSearch({ from: '/signed-in/positions/$airframeId' });
  return (
    <>
      <AirframePage />
      {at === undefined && <RequirementsPanel key={airframeId} on={{ kind: 'airframe', id: airframeId }} />}
    </>
  );
}
