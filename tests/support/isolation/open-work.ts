import { employ, type Office } from '../scenario/office.js';
import { done } from '../scenario/problem.js';
import { signNow } from '../work/sign-now.js';
import { smallInspection } from '../work/small-procedure.js';
import {
  capture,
  recordProcedure,
  type ShownPackage,
  type ShownStep,
  stepOf,
  workOf,
} from '../work/work-desk.js';
import type { FullRegister } from './full-register.js';
import { get, type NamingRequest, post } from './naming-request.js';

type Ids = FullRegister['ids'];

const PICTURE = Buffer.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]);
const AS_PICTURE = { 'content-type': 'image/jpeg' };
const PHOTO = 'capture=picture&fileName=a.jpg';
const reason = { reason: 'Test' };
const PERFORMED = `${new Date().toISOString().slice(0, 16)}Z`;
const ASKED = `meaning=done&performedAt=${PERFORMED}`;
const PROOF = { method: 'password', secret: 'a long enough password 1' };

/** An open package that is worked: its procedure, a step, an entry and a picture. */
export async function openWork(
  office: Pick<Office, 'api' | 'administrator' | 'founded'>,
  mark: string,
  airframeId: string,
) {
  const { administrator } = office;
  const procedure = await recordProcedure(administrator, { kind: 'inspection', content: smallInspection() });
  const asked = { kind: 'inspection', title: `${mark}-inspection`, airframeId, procedureId: procedure };
  const captures = [{ kind: 'photo', key: 'picture', label: 'Picture', required: false }];
  const own = { title: 'Take a picture.', inspection: 'none', captures };
  const { id: openPackage } = done(
    await administrator.post<ShownPackage>('/api/packages', { ...asked, steps: [own] }),
  );
  const technician = await employ(office, {
    signInName: `tech.${mark.toLowerCase()}`,
    fullName: `${mark}-technician`,
    roles: ['technician'],
  });
  const work = await workOf(administrator, openPackage);
  const first = stepOf(work, 'make-safe').id;
  const counted = done(
    await capture(technician, first, { capture: 'tags-out', typed: { kind: 'count', number: '3' } }),
  );
  const step = work.steps.at(-1)?.id ?? '';
  const pictured = done(
    await technician.post<ShownStep>(`/api/steps/${step}/photos?${PHOTO}`, PICTURE, { headers: AS_PICTURE }),
  );
  return {
    procedure,
    openPackage,
    step,
    signature: await signNow(technician, first, { secret: office.founded.password }),
    entry: counted.entries[0]?.id ?? '',
    photo: pictured.entries[0]?.photoId ?? '',
  };
}

/** Requests that name procedures, packages that are worked, and what is in them. */
export function workRequests(theirs: Ids, own: Ids): NamingRequest[] {
  const { procedure, openPackage, step, entry, photo, signature, airframe, component } = theirs;
  const steps = [{ title: 'Look.', inspection: 'none' }];
  const inspection = { kind: 'inspection', title: 'T' };
  const change = { kind: 'component-change', title: 'T', componentId: own.component };
  const typed = { kind: 'count', number: '1' };
  return [
    get('/api/procedures/{id}', procedure),
    get('/api/packages/{id}/steps', openPackage),
    get('/api/step-photos/{id}', photo),
    post('/api/packages', { ...inspection, steps, airframeId: airframe }),
    post('/api/packages', { ...inspection, steps, componentId: component }),
    post('/api/packages', { ...inspection, airframeId: own.airframe, procedureId: procedure }),
    post('/api/packages', {
      ...change,
      order: { slotId: theirs.partSlot, incomingSerial: 'S', ...reason },
    }),
    post('/api/packages/{id}/withdraw', reason, openPackage),
    {
      route: 'GET /api/steps/{id}/statement',
      path: `/api/steps/${step}/statement?${ASKED}`,
    },
    post(
      '/api/steps/{id}/signatures',
      { ...PROOF, meaning: 'done', performedAt: PERFORMED, digest: '0'.repeat(64) },
      step,
    ),
    post('/api/step-signatures/{id}/undo', { ...PROOF, ...reason }, signature),
    post(
      '/api/packages/{id}/order',
      {
        ...reason,
        order: { positionNumber: 1, slot: 'engine', incomingSerial: 'S', ...reason },
        confirmation: { ...PROOF, signInName: `tech.za` },
      },
      openPackage,
    ),
    post('/api/packages/{id}/steps', { title: 'Look.', inspection: 'none' }, openPackage),
    post('/api/steps/{id}/entries', { capture: 'tags-out', typed }, step),
    post('/api/step-entries/{id}/void', reason, entry),
    {
      route: 'POST /api/steps/{id}/photos',
      path: `/api/steps/${step}/photos?${PHOTO}`,
      body: PICTURE,
      headers: AS_PICTURE,
    },
  ];
}
