import { queryOptions } from '@tanstack/react-query';
import { readLoose } from '../../server/loose.js';
import { PACKAGES_KEY, type PackageKind } from '../../server/work.js';

export type Why = 'to-do' | 'to-inspect' | 'rejected';

export interface WaitingStep {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly why: Why;
}

export interface WaitingPackage {
  readonly id: string;
  readonly number: string;
  readonly kind: PackageKind;
  readonly title: string;
  readonly steps: readonly WaitingStep[];
}

interface MyWork {
  readonly packages: readonly WaitingPackage[];
}

/** The steps that wait for whoever is signed in, by package. */
export const myWorkQuery = queryOptions({
  queryKey: [...PACKAGES_KEY, 'my-work'],
  staleTime: 0,
  queryFn: ({ signal }) => readLoose<MyWork>('/api/my-work', { signal }),
});
