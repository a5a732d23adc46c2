import type { ReactNode } from 'react';
import './fact-list.css';

export type Fact = readonly [term: string, value: ReactNode];

interface FactListProps {
  readonly facts: readonly Fact[];
  readonly className?: string;
}

/** Facts, each term with its value. */
export function FactList({ facts, className = 'facts' }: FactListProps) {
  return (
    <dl className={className}>
      {facts.map(([term, value]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
