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
): Promise<{
  readonly requirement: string;
  readonly accomplishment: string;
  readonly assessment: string;
  readonly variation: string;
}> {
  const more = { variation: { cycles: [{ atMost: 50 }] } };
  const requirement = done(await recordRequirement(client, `${mark}-REQ`, more)).id;
  const on = { requirementId: requirement, componentId };
  const met = await accomplish(client, { ...on, on: '2025-01-01' });
  const assessment = done(await client.post<{ id: string }>('/api/assessments', { ...on, ...ASSESSED })).id;
  const variation = done(await client.post<{ id: string }>('/api/variations', { ...on, ...VARIED })).id;
  return { requirement, accomplishment: done(met).id, assessment, variation };
}

/** A return of an airframe to the main base. */
export async function returned(client: HttpClient, airframeId: string): Promise<string> {
  return done(await client.post<{ id: string }>('/api/occurrences', { airframeId, ...RETURN })).id;
}

const ASSESSED = { applicable: true, assessedBy: 'B. Roe', reference: 'R', on: '2025-01-01' };
const VARIED = { cycles: 10, approvedBy: 'B. Roe', reference: 'R', reason: 'X', on: '2025-01-02' };
const RETURN = { kind: 'main-base-return', at: '2025-01-02T10:00Z', evidence: 'E' };

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
    post('/api/accomplishments/{id}/correct', { ...met, ...reason }, theirs.accomplishment),
    post('/api/requirements', newRequirement('T-3', { supersedesId: theirs.requirement })),
    post('/api/requirements', newRequirement('T-4', { terminatesId: theirs.requirement })),
    ...onSubjects('/api/assessments', ASSESSED, theirs, own),
    post('/api/assessments', {
      ...ASSESSED,
      requirementId: own.requirement,
      airframeTypeId: theirs.airframeType,
    }),
    post('/api/assessments', {
      ...ASSESSED,
      requirementId: own.requirement,
      engineModelId: theirs.engineModel,
    }),
    post('/api/assessments/{id}/void', reason, theirs.assessment),
    ...onSubjects('/api/variations', VARIED, theirs, own),
    post('/api/variations/{id}/void', reason, theirs.variation),
    get('/api/airframes/{id}/occurrences', theirs.airframe),
    post('/api/occurrences', { ...RETURN, airframeId: theirs.airframe }),
    post('/api/occurrences/{id}/void', reason, theirs.occurrence),
  ];
}

function onSubjects(path: string, body: object, theirs: Ids, own: Ids): NamingRequest[] {
  const of = { ...body, requirementId: own.requirement };
  return [
    post(path, { ...body, requirementId: theirs.requirement, componentId: own.component }),
    post(path, { ...of, componentId: theirs.component }),
    post(path, { ...of, airframeId: theirs.airframe }),
    post(path, { ...of, positionId: theirs.position }),
  ];
}
