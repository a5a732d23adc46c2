import { ruleSetOn } from '@strutbook/domain/release/rule-sets.js';
import { counted } from '../../../format/counts.js';
import { utcToday } from '../../../format/now.js';
import { holderWords, useMay } from '../../../server/authority.js';
import { useOfflineSince } from '../../../server/connection.js';
import { type Session, useSession } from '../../../server/session.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { isFrozen, useDesk } from '../work/use-desk.js';
import type { Meaning, Missing, Signature, Step, Work } from '../work/work-shapes.js';

/** The signature of that meaning that holds for the step as it is now; null while there is none. */
export const countingOf = (step: Step, meaning: Meaning): Signature | null =>
  step.signatures.findLast((each) => each.meaning === meaning && each.counts) ?? null;

/** What is to be signed next: the work, its inspection, or nothing. */
function nextMeaning(step: Step): Meaning | null {
  if (countingOf(step, 'done') === null) return 'done';
  const looked = step.definition.inspection === 'none' || countingOf(step, 'inspection') !== null;
  return looked ? null : 'inspection';
}

/** Why the named person cannot sign this inspection: it is the one signed in, who did the work. Null when they may. */
export function ownWork(step: Step, meaning: Meaning, session: Session | null, named: string): string | null {
  const { personId } = countingOf(step, 'done') ?? { personId: null };
  const own = session !== null && session.person.id === personId && session.person.signInName === named;
  return meaning === 'inspection' && own
    ? `A different inspector must sign: ${session.person.fullName} did the work.`
    : null;
}

export interface SignState {
  readonly meaning: Meaning | null;
  /** A rejected attempt: the button is not there at all. */
  readonly hidden: boolean;
  /** Why nobody can sign on this tablet now. */
  readonly off: string | null;
  /** Why the person signed in cannot; another one may. */
  readonly notMine: string | null;
  /** Whether the rule set lets one person look again at their own work, with a reason. */
  readonly alone: boolean;
}

/** ' 4' where a torque has several points; a single one needs no number. */
function pointWords({ definition }: Step, { capture, point }: Missing): string {
  const asked = definition.captures.find(({ key }) => key === capture);
  return point === null || (asked?.kind === 'torque' && asked.points.length < 2) ? '' : ` ${point}`;
}

function stepOff(step: Step): string | null {
  const { blockers, missing } = step;
  if (blockers.length > 0) return `Off: waits for ${blockers.map(({ number }) => number).join(', ')}`;
  const [first] = missing;
  if (first === undefined) return null;
  const more = missing.length > 1 ? ` and ${counted(missing.length - 1, 'more', 'more')}` : '';
  return `Off until captured: ${first.label}${pointWords(step, first)}${more}`;
}

const mayAlone = ({ package: { ruleSet } }: Work): boolean =>
  ruleSetOn(ruleSet, utcToday())?.onePersonReinspection === true;

/** Whether this step can be signed now, here, and by whom. The server is the judge. */
export function useSignState(step: Step): SignState {
  const { work } = useDesk();
  const session = useSession();
  const offline = useOfflineSince() !== null;
  const may = { done: useMay('sign-steps'), inspection: useMay('inspect-steps') };
  const meaning = nextMeaning(step);
  if (meaning === null || isFrozen(work))
    return { meaning: null, hidden: true, off: null, notMine: null, alone: false };
  const mine = countingOf(step, 'done')?.personId === session?.person.id;
  const authority = meaning === 'done' ? 'sign-steps' : 'inspect-steps';
  const notMine =
    meaning === 'inspection' && mine
      ? 'A different inspector must sign: you did the work.'
      : may[meaning]
        ? null
        : `This signature needs the authority of: ${holderWords(authority)}. You do not hold it.`;
  return {
    meaning,
    hidden: meaning === 'done' && step.standing === 'rejected',
    off: offline ? OFF_WHILE_OFFLINE : meaning === 'done' ? stepOff(step) : null,
    notMine,
    alone: meaning === 'inspection' && mine && may.inspection && mayAlone(work),
  };
}
