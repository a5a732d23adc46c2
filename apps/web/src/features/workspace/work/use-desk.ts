import { useQueryClient } from '@tanstack/react-query';
import { createContext, useContext } from 'react';
import { type Act, type ActHeaders, useAct } from '../../../server/act.js';
import { holderWords, useMay } from '../../../server/authority.js';
import { useOfflineSince } from '../../../server/connection.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import type { Who } from '../signing/sign-draft.js';
import { holdStep, WORK_KEY } from './work-queries.js';
import type { Meaning, Step, Work } from './work-shapes.js';

export interface Desk {
  readonly work: Work;
  /** Opens the sheet to sign a step. */
  readonly onSign: (step: Step, meaning: Meaning, who: Who) => void;
  /** The step in which a reading stands rejected that is not recorded yet. */
  readonly held: string | null;
  readonly onHold: (stepId: string | null) => void;
  /** The address of a step. */
  readonly hrefOf: (stepId: string) => string;
}

/** The package around a step, for its captures and its signatures. */
export const DeskContext = createContext<Desk | null>(null);

/** The package that is worked in. Throws outside of a workspace. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (desk === null) throw new Error('outside of a workspace');
  return desk;
}

export const isFrozen = ({ package: { status } }: Pick<Work, 'package'>): boolean => status !== 'open';

/** Why nothing can be entered now; null when it can. */
export function useEntryOff(): string | null {
  const { work } = useDesk();
  const may = useMay('sign-steps');
  const offline = useOfflineSince() !== null;
  if (isFrozen(work)) return `Off: this package is ${work.package.status}`;
  if (!may) return `Entering needs the authority of: ${holderWords('sign-steps')}. You do not hold it.`;
  return offline ? `${OFF_WHILE_OFFLINE}. What you typed stays here.` : null;
}

/** An act that answers with the step as it stands after it. */
export function useStepAct<Words>(
  perform: (words: Words, headers: ActHeaders) => Promise<Step>,
  onDone?: (step: Step, words: Words) => void,
): Act<Words, Step> {
  const queries = useQueryClient();
  const { work } = useDesk();
  return useAct({
    perform,
    refresh: [WORK_KEY],
    onDone: (step, words) => {
      holdStep(queries, work.package.id, step);
      onDone?.(step, words);
    },
  });
}
