import type { HttpClient } from '../http-client.js';
import { done } from '../scenario/problem.js';

/** Signs a step as done or inspected this very minute, by the password everybody has here. Answers the signature's id. Throws when it is refused. */
export async function signNow(
  client: HttpClient,
  stepId: string,
  { meaning = 'done', secret }: { readonly meaning?: 'done' | 'inspection'; readonly secret: string },
): Promise<string> {
  const performedAt = `${new Date().toISOString().slice(0, 16)}Z`;
  const asked = `/api/steps/${stepId}/statement?meaning=${meaning}&performedAt=${performedAt}`;
  const { digest } = done(await client.get<{ digest: string }>(asked));
  const proof = { method: 'password', secret };
  const signature = { ...proof, meaning, performedAt, digest };
  return done(await client.post<{ readonly id: string }>(`/api/steps/${stepId}/signatures`, signature)).id;
}
