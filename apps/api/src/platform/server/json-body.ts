import type { FastifyInstance } from 'fastify';
import { RefusalError } from '../problems/refusal.error.js';

/** Deeper than any request of ours, and far from what would exhaust the stack. */
const DEEPEST = 32;

/** Takes JSON alone, not nested without end, and with no member that reaches for a prototype. */
export function acceptJson(server: FastifyInstance): void {
  const parse = server.getDefaultJsonParser('error', 'error');
  server.removeContentTypeParser(['application/json', 'text/plain']);
  server.addContentTypeParser('application/json', { parseAs: 'string' }, (request, body, done) => {
    if (isDeeperThan(DEEPEST, String(body))) {
      const reason = `The body is nested more than ${DEEPEST} deep.`;
      done(
        new RefusalError({ code: 'MALFORMED', reason, fix: 'Send the fields that this route describes.' }),
      );
      return;
    }
    parse(request, String(body), done);
  });
}

const STEPS: Readonly<Record<string, number>> = { '[': 1, '{': 1, ']': -1, '}': -1 };

/** True when lists and objects are nested deeper. Text in quotes does not count. */
function isDeeperThan(most: number, json: string): boolean {
  let depth = 0;
  for (let at = 0; at < json.length; at += 1) {
    const sign = json[at] ?? '';
    if (sign === '"') at = endOfText(json, at);
    else depth += STEPS[sign] ?? 0;
    if (depth > most) return true;
  }
  return false;
}

/** Where the text that begins at this quote has its closing one. */
function endOfText(json: string, start: number): number {
  let at = start + 1;
  while (at < json.length && json[at] !== '"') at += json[at] === '\\' ? 2 : 1;
  return at;
}
