import type { FullRegister } from './full-register.js';
import { get, type NamingRequest, post } from './naming-request.js';

type Ids = FullRegister['ids'];

const reason = { reason: 'Test' };

/** Requests that name people, what they may sign, and tools. */
export function peopleAndTools(
  { authorisation, tool, calibration, person, airframeType }: Ids,
  own: Ids,
): NamingRequest[] {
  const authority = { scope: 'work', fromOn: '2025-01-01', reference: 'R' };
  return [
    post('/api/authorisations', { ...authority, personId: person }),
    post('/api/authorisations', { ...authority, personId: own.person, airframeTypeId: airframeType }),
    post('/api/authorisations/{id}/end', { lastOn: '2026-01-01', ...reason }, authorisation),
    post('/api/authorisations/{id}/void', reason, authorisation),
    get('/api/tools/{id}', tool),
    post(
      '/api/tools/{id}/calibrations',
      { calibratedOn: '2025-02-01', dueOn: '2026-02-01', certificate: 'C' },
      tool,
    ),
    post('/api/tool-calibrations/{id}/void', reason, calibration),
  ];
}
