import type { ReactNode } from 'react';
import './messages.css';

interface EmptyStateProps {
  /** What belongs here and is not there: 'No flights after 11 Nov.' */
  readonly children: ReactNode;
  /** The one act that fills it. Left out for those who may not. */
  readonly action?: ReactNode;
}

/** Nothing is recorded here yet. */
export function EmptyState({ children, action }: EmptyStateProps) {
  return (
    <div className="empty">
      <p>{children}</p>
      {action}
    </div>
  );
}
