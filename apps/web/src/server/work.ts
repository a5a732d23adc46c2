import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { readLoose } from './loose.js';
import type { PackageChange } from './wire.js';

export type PackageKind = 'engine-change' | 'pod-swap' | 'inspection' | 'component-change' | 'directive';
export type PackageStatus = 'open' | 'released' | 'withdrawn';

export interface StepCounts {
  readonly signed: number;
  readonly total: number;
}

interface PackageHead {
  readonly id: string;
  readonly number: string;
  readonly kind: PackageKind;
  readonly title: string;
  readonly status: PackageStatus;
  readonly openedAt: string;
  readonly airframe: { readonly id: string; readonly registration: string } | null;
  readonly component?: {
    readonly id: string;
    readonly serialNumber: string;
    readonly description?: string;
  } | null;
  /** Where on it: 'Position 3'. */
  readonly place?: string | null;
  /** None for a change logged as one act. */
  readonly steps?: StepCounts;
  readonly version: number;
}

export interface WorkRow extends PackageHead {
  readonly releaseNumber: string | null;
}

export interface OrderedComponent {
  readonly id: string;
  readonly kind: string;
  readonly serialNumber: string;
  readonly partNumber: string;
  readonly description: string;
  /** Where the register has it now. */
  readonly place: string;
}

/** What a package is to change at a place, as the order stands. */
export interface Order {
  readonly id: string;
  readonly slotId: string;
  readonly slot: string;
  readonly slotName: string;
  /** Null for a place inside a component. */
  readonly positionNumber: number | null;
  readonly outgoing: OrderedComponent | null;
  readonly incoming: OrderedComponent | null;
  readonly ratingCode: string | null;
  readonly removedToLocation: string | null;
  readonly reason: string;
  /** Who confirmed it when it was amended. */
  readonly confirmedBy: string | null;
}

export interface NamedRequirement {
  readonly requirementId: string;
  readonly number: string;
  readonly title: string;
}

export interface PackageDocument {
  readonly id: string;
  readonly code: string;
  readonly revision: string;
  readonly title: string;
  readonly document: string;
  readonly documentRevision: string;
}

export interface WorkPackage extends PackageHead {
  readonly changes: readonly PackageChange[];
  readonly release: {
    readonly id: string;
    readonly number: string;
    readonly signedAt: string;
    readonly person: string;
    readonly licence: string | null;
  } | null;
  readonly procedure?: PackageDocument | null;
  readonly reference?: string | null;
  readonly order?: Order | null;
  readonly requirements?: readonly NamedRequirement[];
}

export const PACKAGES_KEY = ['packages'] as const;

export interface PackagesAsked {
  readonly airframe?: string | undefined;
  readonly kind?: string | undefined;
  readonly status?: string | undefined;
}

interface WorkPage {
  readonly rows: readonly WorkRow[];
  readonly next: string | null;
}

/** Packages, the newest first, a page at a time. */
export const packagesQuery = ({ airframe, kind, status }: PackagesAsked) =>
  infiniteQueryOptions({
    queryKey: [...PACKAGES_KEY, 'list', airframe ?? 'all', kind ?? 'all', status ?? 'all'],
    staleTime: 0,
    initialPageParam: null as string | null,
    queryFn: ({ signal, pageParam }) =>
      readLoose<WorkPage>('/api/packages', {
        params: {
          query: {
            ...(airframe === undefined ? {} : { airframeId: airframe }),
            ...(kind === undefined ? {} : { kind }),
            ...(status === undefined ? {} : { status }),
            ...(pageParam === null ? {} : { after: pageParam }),
          },
        },
        signal,
      }),
    getNextPageParam: ({ next }) => next,
  });

/** One package: what it is, what was changed, and its release. */
export const packageQuery = (id: string) =>
  queryOptions({
    queryKey: [...PACKAGES_KEY, 'one', id],
    enabled: id !== '',
    staleTime: 0,
    queryFn: ({ signal }) =>
      readLoose<WorkPackage>('/api/packages/{id}', { params: { path: { id } }, signal }),
  });

/** Whether it is worked by steps, and not a change logged as one act. */
export const hasSteps = ({ steps }: Pick<PackageHead, 'steps'>): boolean => (steps?.total ?? 0) > 0;
