import { inShort } from '../../support/scenario/problem.js';
import type { Act } from './act.js';
import { after } from './apply-act.js';
import { type Choice, chosen, enteredAgain, lastMinute } from './choose.js';
import { differences } from './compare.js';
import { perform } from './perform.js';
import { firstRecord, type PlainRecord } from './plain-record.js';
import type { SystemWorld } from './system-world.js';

/** How often each kind of act was recorded, and how often one was refused. */
export interface Tally {
  readonly recorded: Map<string, number>;
  refused: number;
}

/**
 * Plays a history in both: each act is taken by the system when the plain lists can take it, and refused when they
 * can't; at the end everything is compared. Throws at the first difference, with the acts that led to it.
 */
export async function play(world: SystemWorld, choices: readonly Choice[], tally: Tally): Promise<void> {
  const told: string[] = [];
  let record = firstRecord();
  let page = 0;
  for (const choice of choices) {
    page += 1;
    const act = chosen(record, choice, `p${page}`);
    if (act === null) continue;
    const voided =
      act.kind === 'void-stay' ? record.stays.find((stay) => stay.number === act.stay) : undefined;
    record = await tell(world, record, act, { told, tally });
    if (voided !== undefined)
      record = await tell(world, record, enteredAgain(voided, choice), { told, tally });
  }
  const past = (choices[0]?.d ?? 0) % (lastMinute(record) + 1);
  const found = await differences(world, record, past);
  if (found.length > 0) throw new Error(`${found.join('\n')}\nafter\n${told.join('\n')}`);
}

async function tell(
  world: SystemWorld,
  record: PlainRecord,
  act: Act,
  { told, tally }: { readonly told: string[]; readonly tally: Tally },
): Promise<PlainRecord> {
  const next = after(record, act);
  const answer = await perform(world, record, act);
  told.push(`${JSON.stringify(act)} -> ${answer.status}`);
  const taken = answer.status >= 200 && answer.status < 300;
  const refused = answer.status === 409 || answer.status === 422;
  if (taken !== (next !== null) || (!taken && !refused))
    throw new Error(
      `the lists ${next === null ? 'refuse' : 'take'} this, the system says ${inShort(answer)}\n${told.join('\n')}`,
    );
  if (taken) tally.recorded.set(act.kind, (tally.recorded.get(act.kind) ?? 0) + 1);
  else tally.refused += 1;
  return next ?? record;
}
