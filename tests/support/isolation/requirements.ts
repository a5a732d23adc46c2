import type { HttpClient } from '../http-client.js';
import { done } from '../scenario/problem.js';
import { accomplish, newRequirement, recordRequirement } from '../scenario/requirements.js';
import type { FullRegister } from './full-register.js';
import { get, type NamingRequest, post } from './naming-request.js';

type Ids = FullRegister['ids'];

const reason = { reason: 'Test' };

/** A requirement of all engines, and that it was met on one. */
export async function metRequirement(
  client: HttpClient,
  mark: string,
  componentId: string,
): Promise<{ readonly requirement: string; readonly accomplishment: string }> {
  const requirement = done(await recordRequirement(client, `${mark}-REQ`)).id;
  const met = await accomplish(client, { requirementId: requirement, componentId, on: '2025-01-01' });
  return { requirement, accomplishment: done(met).id };
}

/** Requests that name requirements, and what they are held against. */
export function aboutRequirements(theirs: Ids, own: Ids): NamingRequest[] {
  const met = { on: '2025-01-02', evidence: 'E' };
  return [
    get('/api/requirements/{id}', theirs.requirement),
    get('/api/airframes/{id}/requirements', theirs.airframe),
    get('/api/components/{id}/requirements', theirs.component),
    post(
      '/api/requirements',
      newRequirement('T-1', { anchor: 'airframe', airframeTypeId: theirs.airframeType }),
    ),
    post('/api/requirements', newRequirement('T-2', { engineModelId: theirs.engineModel })),
    post('/api/requirements/{id}/void', reason, theirs.requirement),
    post('/api/accomplishments', { ...met, requirementId: theirs.requirement, componentId: own.component }),
    post('/api/accomplishments', { ...met, requirementId: own.requirement, componentId: theirs.component }),
    post('/api/accomplishments', { ...met, requirementId: own.requirement, airframeId: theirs.airframe }),
    post('/api/accomplishments', { ...met, requirementId: own.requirement, positionId: theirs.position }),
    post('/api/accomplishments/{id}/void', reason, theirs.accomplishment),
  ];
}
