import type { Answer, HttpClient, RequestOptions } from '../http-client.js';
import { instantAt } from '../scenario/instants.js';
import { done } from '../scenario/problem.js';

/** A signature as a step shows it. */
export interface ShownSignature {
  readonly id: string;
  readonly meaning: 'done' | 'inspection';
  readonly personName: string;
  readonly method: string;
  readonly performedAt: string;
  readonly contentHash: string;
  readonly undone: boolean;
  readonly counts: boolean;
}

/** A step as the package shows it. */
export interface ShownStep {
  readonly id: string;
  readonly version: number;
  readonly contentHash: string;
  readonly standing: string;
  readonly definition: { readonly key: string; readonly number: number };
  readonly entries: readonly {
    readonly id: string;
    readonly capture: string;
    readonly voided: boolean;
    readonly judgement: { readonly verdict: string };
  }[];
  readonly signatures: readonly ShownSignature[];
}

export interface Statement {
  readonly statement: string;
  readonly digest: string;
  readonly contentHash: string;
  readonly missing: readonly { readonly code: string; readonly capture: string }[];
  readonly blockers: readonly { readonly code: string; readonly number: number }[];
}

export interface GivenSignature {
  readonly id: string;
  readonly person: string;
  readonly method: string;
  readonly statement: string;
  readonly contentHash: string;
  readonly coversId: string | null;
  readonly moved: readonly { readonly serialNumber: string; readonly at: string }[];
  readonly version: number;
}

/** A signature to give; minutes since 2025-01-01. */
export interface ToSign {
  readonly at: number;
  readonly secret: string;
  readonly meaning?: 'done' | 'inspection';
  readonly method?: 'password' | 'pin';
  /** Another person at this tablet. */
  readonly signInName?: string;
  readonly reinspectionReason?: string;
  /** Sent instead of the digest of the words as they stand. */
  readonly digest?: string;
}

/** What a package is ordered to change. */
export interface OrderToWrite {
  readonly positionNumber?: number;
  readonly slot?: 'engine' | 'pod';
  readonly slotId?: string;
  readonly outgoingSerial?: string | null;
  readonly incomingSerial?: string | null;
  readonly ratingCode?: string;
}

/** The order with the reason and the place that every request needs. */
export function asOrder(order: OrderToWrite) {
  return { removedToLocation: 'Store', reason: 'Test', ...order };
}

/** Opens a package and answers its id. */
export async function openPackage(client: HttpClient, body: object): Promise<string> {
  return done(await client.post<{ readonly id: string }>('/api/packages', { title: 'Test', ...body })).id;
}

/** The steps of a package by their keys. */
export async function stepsOf(
  client: HttpClient,
  packageId: string,
): Promise<Readonly<Record<string, ShownStep>>> {
  const { steps } = done(
    await client.get<{ readonly steps: readonly ShownStep[] }>(`/api/packages/${packageId}/steps`),
  );
  return Object.fromEntries(steps.map((step) => [step.definition.key, step]));
}

/** The words that would be signed. */
export function statementOf(
  client: HttpClient,
  stepId: string,
  { at, meaning = 'done', signInName, reinspectionReason }: Omit<ToSign, 'secret'>,
): Promise<Answer<Statement>> {
  const query = new URLSearchParams({
    meaning,
    performedAt: instantAt(at),
    ...(signInName === undefined ? {} : { signInName }),
    ...(reinspectionReason === undefined ? {} : { reinspectionReason }),
  });
  return client.get(`/api/steps/${stepId}/statement?${query}`);
}

/** Reads the words, then signs them. Answers the refusal of either. */
export async function sign(
  client: HttpClient,
  stepId: string,
  toSign: ToSign,
  options?: RequestOptions,
): Promise<Answer<GivenSignature>> {
  const { at, secret, meaning = 'done', method = 'password', signInName, reinspectionReason } = toSign;
  const seen = toSign.digest === undefined ? await statementOf(client, stepId, toSign) : null;
  if (seen !== null && seen.status >= 300) return seen as unknown as Answer<GivenSignature>;
  return client.post(
    `/api/steps/${stepId}/signatures`,
    {
      meaning,
      performedAt: instantAt(at),
      digest: toSign.digest ?? seen?.body.digest,
      method,
      secret,
      ...(signInName === undefined ? {} : { signInName }),
      ...(reinspectionReason === undefined ? {} : { reinspectionReason }),
    },
    options,
  );
}

/** Captures one thing in a step. */
export function capture(
  client: HttpClient,
  stepId: string,
  entry: { readonly capture: string; readonly typed: object },
): Promise<Answer<ShownStep>> {
  return client.post(`/api/steps/${stepId}/entries`, entry);
}

/** What is typed for each capture of the change in five steps. */
export const typed = {
  safe: { capture: 'safe', typed: { kind: 'check', seen: true } },
  off: (serialNumber: string, positionNumber: string | null) => ({
    capture: 'off',
    typed: { kind: 'component-off', serialNumber, partNumber: null, positionNumber },
  }),
  on: (serialNumber: string, positionNumber: string | null) => ({
    capture: 'on',
    typed: { kind: 'component-on', serialNumber, partNumber: null, positionNumber },
  }),
  papers: (serial: string, documentSerial = serial) => ({
    capture: 'papers',
    typed: {
      kind: 'papers',
      ...{ plateSerial: serial, documentSerial, documentNumber: 'F1-001', tag: 'serviceable' },
    },
  }),
  note: (text: string) => ({ capture: 'note', typed: { kind: 'text', text } }),
} as const;
