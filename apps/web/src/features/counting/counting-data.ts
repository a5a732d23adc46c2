import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../server/act.js';
import { api } from '../../server/api.js';

type Shapes = components['schemas'];
export type CounterReadings = Shapes['CounterReadingsDto'];
export type CounterReading = Shapes['CounterReadingDto'];
export type GroundRun = Shapes['GroundRunDto'];
export type GroundRunAnswer = Shapes['GroundRunAnswerDto'];
export type CounterAnswer = Shapes['CounterAnswerDto'];
export type TestCell = Shapes['TestCellDto'];
type Headers = ActHeaders;

export const COUNTING_KEY = ['counting'] as const;

/** All readings of a unit's counter. */
export const readingsQuery = (componentId: string) =>
  queryOptions({
    queryKey: [...COUNTING_KEY, 'readings', componentId],
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/components/{id}/counter-readings', {
          params: { path: { id: componentId } },
          signal,
        }),
      ),
  });

export const testCellsQuery = queryOptions({
  queryKey: [...COUNTING_KEY, 'cells'],
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/test-cells', { signal })),
});

/** Where runs are listed of. */
export interface RunsOf {
  readonly kind: 'airframe' | 'cell';
  readonly id: string;
}

/** Runs of an airframe or a test cell, newest first, voided ones too, a page at a time. */
export const runsQuery = ({ kind, id }: RunsOf) =>
  infiniteQueryOptions({
    queryKey: [...COUNTING_KEY, 'runs', kind, id],
    initialPageParam: null as string | null,
    queryFn: async ({ signal, pageParam }) => {
      const query = { voided: 'true' as const, ...(pageParam === null ? {} : { after: pageParam }) };
      const asked = { params: { path: { id }, query }, signal };
      return dataOrThrow(
        kind === 'airframe'
          ? await api.GET('/api/airframes/{id}/ground-runs', asked)
          : await api.GET('/api/test-cells/{id}/runs', asked),
      );
    },
    getNextPageParam: (page) => page.next,
  });

// Each sends one act. Throws: ProblemError.

export const readCounter = async (
  { id, ...body }: Shapes['NewReadingDto'] & { readonly id: string },
  headers: Headers,
) =>
  dataOrThrow(
    await api.POST('/api/components/{id}/counter-readings', { params: { path: { id } }, body, headers }),
  );

export const replaceCounter = async (
  { id, ...body }: Shapes['NewReplacementDto'] & { readonly id: string },
  headers: Headers,
) =>
  dataOrThrow(
    await api.POST('/api/components/{id}/counter-replacements', { params: { path: { id } }, body, headers }),
  );

export const correctReading = async (
  { id, ...body }: Shapes['CorrectReadingDto'] & { readonly id: string },
  headers: Headers,
) =>
  dataOrThrow(
    await api.POST('/api/counter-readings/{id}/correct', { params: { path: { id } }, body, headers }),
  );

export const voidReading = async (
  { id, reason }: { readonly id: string; readonly reason: string },
  headers: Headers,
) =>
  dataOrThrow(
    await api.POST('/api/counter-readings/{id}/void', {
      params: { path: { id } },
      body: { reason },
      headers,
    }),
  );

/** A run to record: at a position of an airframe, or in a test cell. */
export type NewRun = Shapes['NewCellRunDto'] & RunsOf & { readonly positionNumber: number | null };

export const recordRun = async ({ kind, id, positionNumber, ...body }: NewRun, headers: Headers) => {
  const params = { path: { id } };
  return dataOrThrow(
    kind === 'cell'
      ? await api.POST('/api/test-cells/{id}/runs', { params, body, headers })
      : await api.POST('/api/airframes/{id}/ground-runs', {
          params,
          body: { ...body, positionNumber: positionNumber ?? 0 },
          headers,
        }),
  );
};

export const voidRun = async (
  { id, reason }: { readonly id: string; readonly reason: string },
  headers: Headers,
) =>
  dataOrThrow(
    await api.POST('/api/ground-runs/{id}/void', { params: { path: { id } }, body: { reason }, headers }),
  );

export const addTestCell = async (body: Shapes['NewTestCellDto'], headers: Headers) =>
  dataOrThrow(await api.POST('/api/test-cells', { body, headers }));
