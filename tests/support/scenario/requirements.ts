import type { Answer, HttpClient } from '../http-client.js';

/** A requirement as the API answers it, as far as tests look. */
export interface RequirementAnswer {
  readonly id: string;
  readonly code: string;
  readonly revision: string;
  readonly inForce: boolean;
  readonly open: number;
  readonly voided: boolean;
}

/** One dimension of what is held against a subject. */
export interface DueAnswer {
  readonly dimension: string;
  readonly dueAt: number | null;
  readonly dueOn: string | null;
  /** The end of what is granted past it; null as the due is. */
  readonly latestAt: number | null;
  readonly latestOn: string | null;
  readonly remaining: number;
  readonly days: number | null;
  readonly daysText: string | null;
}

/** What is held against a subject, as far as tests look. */
export interface StatusAnswer {
  readonly requirementId: string;
  readonly code: string;
  readonly subject: string;
  readonly airframeId: string | null;
  readonly positionId: string | null;
  readonly componentId: string | null;
  readonly status: string;
  readonly reason: string | null;
  readonly counting: string | null;
  readonly dues: readonly DueAnswer[];
  readonly governing: string | null;
  readonly lastDone: { readonly on: string } | null;
}

/** A requirement that repeats after 500 cycles of any engine, unless told otherwise. */
export function newRequirement(code: string, more: object = {}): object {
  return {
    code,
    title: `Test ${code}`,
    kind: 'inspection',
    document: 'Programme, chapter 05',
    revision: '1',
    anchor: 'engine',
    repeat: { cycles: 500 },
    countedFrom: 'new',
    effectiveOn: '2020-01-01',
    ...more,
  };
}

/** Records a requirement. */
export function recordRequirement(
  client: HttpClient,
  code: string,
  more: object = {},
): Promise<Answer<RequirementAnswer>> {
  return client.post('/api/requirements', newRequirement(code, more));
}

/** Records by hand that a requirement was met. */
export function accomplish(
  client: HttpClient,
  body: { readonly requirementId: string } & Readonly<Record<string, unknown>>,
): Promise<
  Answer<{ readonly id: string; readonly voided: boolean; readonly on: string; readonly at: string }>
> {
  return client.post('/api/accomplishments', { evidence: 'Work card 1', ...body });
}
