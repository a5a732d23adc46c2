import type { ReactNode } from 'react';

interface FactListProps {
  readonly facts: readonly (readonly [term: string, value: ReactNode])[];
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
