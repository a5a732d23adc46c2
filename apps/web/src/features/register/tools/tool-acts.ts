import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import type { ToolView } from '../../../server/tools.js';

type Shapes = components['schemas'];
export type NewTool = Shapes['NewToolDto'];
export type NewCalibration = Shapes['NewCalibrationDto'] & { readonly toolId: string };

/** Registers a tool. Throws: ProblemError. */
export async function addTool(body: NewTool, headers: ActHeaders): Promise<ToolView> {
  return dataOrThrow(await api.POST('/api/tools', { body, headers }));
}

/** Records a calibration. Throws: ProblemError. */
export async function recordCalibration(
  { toolId, ...body }: NewCalibration,
  headers: ActHeaders,
): Promise<ToolView> {
  return dataOrThrow(
    await api.POST('/api/tools/{id}/calibrations', { params: { path: { id: toolId } }, body, headers }),
  );
}

/** Voids a calibration that was recorded wrongly. Throws: ProblemError. */
export async function voidCalibration(
  { id, reason }: { readonly id: string; readonly reason: string },
  headers: ActHeaders,
): Promise<ToolView> {
  return dataOrThrow(
    await api.POST('/api/tool-calibrations/{id}/void', {
      params: { path: { id } },
      body: { reason },
      headers,
    }),
  );
}
