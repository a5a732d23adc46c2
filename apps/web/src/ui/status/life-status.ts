import { markOf } from './near.js';
import type { Status } from './statuses.js';

/** The mark of a part's life, as the server tells its status. Without a trusted record it is not verified, never fine. Total. */
export const markOfLife = (life: { readonly status: string } | null): Status =>
  life === null ? 'not-verified' : markOf(life.status);
