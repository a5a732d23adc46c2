import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { SubjectHistory } from './subject-history.js';

/** The history of an engine, a module, a part or a pod. */
export function ComponentHistoryPage() {
  const { componentId } = useParams({ from: '/signed-in/history/components/$componentId' });
  const filter = useSearch({ from: '/signed-in/history/components/$componentId' });
  const navigate = useNavigate();
  return (
    <SubjectHistory
      key={componentId}
      subject={{ kind: 'component', id: componentId }}
      filter={filter}
      onFilter={(search) =>
        void navigate({
          to: '/history/components/$componentId',
          params: { componentId },
          search,
          replace: true,
        })
      }
    />
  );
}
