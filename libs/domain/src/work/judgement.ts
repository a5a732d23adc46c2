import type { EntryReason, Judgement } from './entry.js';

/** A judgement: accepted where nothing is held against it. Total. */
export function judgement(reasons: readonly EntryReason[], computed: Judgement['computed'] = {}): Judgement {
  return { verdict: reasons.length === 0 ? 'accepted' : 'rejected', reasons, computed };
}
