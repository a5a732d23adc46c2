import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from './api.js';

type Shapes = components['schemas'];
export type Tool = Shapes['ToolDto'];
export type ToolView = Shapes['ToolViewDto'];
export type Calibration = Shapes['CalibrationDto'];
export type ToolUse = Shapes['ToolUseDto'];

export const TOOLS_KEY = ['tools'] as const;

/** Every tool that is calibrated. */
export const toolsQuery = queryOptions({
  queryKey: [...TOOLS_KEY, 'all'],
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/tools', { signal })),
});

/** One tool with its calibrations and uses. */
export const toolQuery = (id: string) =>
  queryOptions({
    queryKey: [...TOOLS_KEY, 'one', id],
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/tools/{id}', { params: { path: { id } }, signal })),
  });
