import { setTimeout as sleep } from 'node:timers/promises';
import type { Answer, HttpClient } from '../http-client.js';
import { done } from '../scenario/problem.js';
import type { Hangar } from './hangar.js';
import { capture, type GivenSignature, type ShownStep, sign, typed } from './work-desk.js';

/** Something held against a release. */
export interface ShownObjection {
  readonly code: string;
  readonly severity: 'blocking' | 'advisory';
  readonly subject: { readonly kind: string; readonly id: string; readonly label: string };
  readonly reason: string;
  readonly fix: string;
}

export interface ShownCheck {
  readonly digest: string;
  readonly version: number;
  readonly released: boolean;
  readonly summary: string;
  readonly objections: readonly ShownObjection[];
  readonly passed: readonly { readonly label: string; readonly count: number; readonly of: number }[];
}

export interface ShownRelease {
  readonly id: string;
  readonly number: string;
  readonly subject: string;
  readonly statement: string;
  readonly contentHash: string;
  readonly snapshotHash: string;
  readonly signedAt: string;
  readonly objections: readonly ShownObjection[];
  readonly certificate: {
    readonly documentId: string;
    readonly fileName: string;
    readonly pages: number;
    readonly sha256: string;
  } | null;
}

export type Steps = Readonly<Record<string, ShownStep>>;

/** The id of a step by its key. Throws when there is none. */
export function idOf(steps: Steps, key: string): string {
  const step = steps[key];
  if (step === undefined) throw new Error(`no step ${key}`);
  return step.id;
}

/** What is held against releasing a package. */
export async function checkOf(client: HttpClient, packageId: string): Promise<ShownCheck> {
  return done(await client.get<ShownCheck>(`/api/packages/${packageId}/release-check`));
}

/** The codes of what blocks, in their order. */
export function blocking({ objections }: Pick<ShownCheck, 'objections'>): string[] {
  return objections.filter(({ severity }) => severity === 'blocking').map(({ code }) => code);
}

/** Reads the check and signs what it shows. */
export async function release(
  client: HttpClient,
  packageId: string,
  password: string,
  seen?: Pick<ShownCheck, 'digest' | 'version'>,
): Promise<Answer<ShownRelease>> {
  const { digest, version } = seen ?? (await checkOf(client, packageId));
  return client.post(
    `/api/packages/${packageId}/release`,
    { password, digest },
    { ifMatch: `"v${version}"` },
  );
}

/** Works the five steps of the change in order, each signed and inspected as it asks. */
export async function workChange(
  { technician, inspector, password: secret }: Pick<Hangar, 'technician' | 'inspector' | 'password'>,
  steps: Steps,
  {
    off,
    on,
    position,
    at,
  }: { readonly off: string; readonly on: string; readonly position: string; readonly at: number },
): Promise<Readonly<Record<string, GivenSignature>>> {
  const given: Record<string, GivenSignature> = {};
  const work = async (
    key: string,
    entry: { readonly capture: string; readonly typed: object },
    minute: number,
  ) => {
    done(await capture(technician, idOf(steps, key), entry));
    given[key] = done(await sign(technician, idOf(steps, key), { at: minute, secret }));
  };
  const inspect = async (key: string, minute: number) => {
    given[`${key} inspected`] = done(
      await sign(inspector, idOf(steps, key), { at: minute, secret, meaning: 'inspection' }),
    );
  };
  await work('make-safe', typed.safe, at);
  await work('remove', typed.off(off, position), at + 10);
  await work('accept', typed.papers(on), at + 20);
  await work('install', typed.on(on, position), at + 30);
  await inspect('install', at + 40);
  await work('remark', typed.note('Nothing to remark'), at + 50);
  await inspect('remark', at + 60);
  return given;
}

/** The release once its certificate is printed. */
export async function withCertificate(client: HttpClient, releaseId: string): Promise<ShownRelease> {
  for (const deadline = Date.now() + 30_000; Date.now() < deadline; await sleep(100)) {
    const shown = done(await client.get<ShownRelease>(`/api/releases/${releaseId}`));
    if (shown.certificate !== null) return shown;
  }
  throw new Error('the certificate was not prepared within 30 s');
}
