import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { SubjectHistory } from './subject-history.js';

/** The history of an airframe. */
export function AirframeHistoryPage() {
  const { airframeId } = useParams({ from: '/signed-in/history/airframes/$airframeId' });
  const filter = useSearch({ from: '/signed-in/history/airframes/$airframeId' });
  const navigate = useNavigate();
  return (
    <SubjectHistory
      key={airframeId}
      subject={{ kind: 'airframe', id: airframeId }}
      filter={filter}
      onFilter={(search) =>
        void navigate({ to: '/history/airframes/$airframeId', params: { airframeId }, search, replace: true })
      }
    />
  );
}
