import { useQuery } from '@tanstack/react-query';
import { useParams, useSearch } from '@tanstack/react-router';
import { ComponentPage } from '../../features/component/component-page.js';
import { componentAtQuery } from '../../features/component/component-queries.js';
import { CounterPanel } from '../../features/counting/counter/counter-panel.js';
import { DuePanel } from '../../features/due-list/due-panel.js';
import { FlownOver } from '../../features/overruns/flown-over.js';
import { RequirementsPanel } from '../../features/register/requirements/held/requirements-panel.js';
import { ServiceabilityPanel } from '../../features/serviceability/serviceability-panel.js';

/** A component with, as it is now, what is held against it and all in it. */
export function ComponentRoute() {
  const { componentId } = useParams({ from: '/signed-in/components/$componentId' });
  const { at } = useSearch({ from: '/signed-in/components/$componentId' });
  const kind = useQuery(componentAtQuery(componentId, at)).data?.kind;
  return (
    <>
      <ComponentPage />
      {at === undefined && kind === 'apu' && (
        <CounterPanel key={`counter ${componentId}`} componentId={componentId} />
      )}
      {at === undefined && (
        <>
          <FlownOver key={`over ${componentId}`} of={{ kind: 'component', id: componentId }} />
          <DuePanel key={`due ${componentId}`} on={{ kind: 'component', id: componentId }} />
          <ServiceabilityPanel key={`tags ${componentId}`} componentId={componentId} />
          <RequirementsPanel key={componentId} on={{ kind: 'component', id: componentId }} />
        </>
      )}
    </>
  );
}
