import { useState } from 'react';
import { useMay } from '../../../../server/authority.js';
import { heldKey, type RequirementStatus } from '../../../../server/requirements.js';
import { Button } from '../../../../ui/actions/button.js';
import { AssessForm } from './assess-form.js';
import { MetForm } from './met-form.js';
import { isVariable } from './tolerance-words.js';
import { VaryForm } from './vary-form.js';

type ActKind = 'met' | 'assess' | 'vary';

/** An act that is asked for, on a row. */
export interface AskedOnRow {
  readonly act: ActKind;
  readonly row: RequirementStatus;
}

interface HeldActs {
  readonly asked: AskedOnRow | null;
  readonly ask: (asked: AskedOnRow | null) => void;
  /** What may be done with a row by who is signed in, in order. */
  readonly offered: (row: RequirementStatus) => readonly ActKind[];
}

/** What may be done with requirements that are held against something. */
export function useHeldActs(): HeldActs {
  const mayRecord = useMay('keep-records');
  const mayKeep = useMay('keep-requirements');
  const [asked, ask] = useState<AskedOnRow | null>(null);
  const offered = (row: RequirementStatus): readonly ActKind[] => {
    const applies = row.status !== 'not-applicable';
    const assess = mayKeep && row.needsAssessment;
    return [
      ...(assess && row.assessment === null ? (['assess'] as const) : []),
      ...(mayRecord && applies && row.status !== 'closed' ? (['met'] as const) : []),
      ...(assess && row.assessment !== null ? (['assess'] as const) : []),
      ...(mayKeep && applies && row.variation === null && isVariable(row) ? (['vary'] as const) : []),
    ];
  };
  return { asked, ask, offered };
}

const WORDS: Readonly<Record<ActKind, string>> = { met: 'It was met', assess: 'Assess', vary: 'Vary' };

/** The buttons of one row. */
export function RowActs({ acts, row }: { readonly acts: HeldActs; readonly row: RequirementStatus }) {
  return (
    <span className="duty-acts">
      {acts.offered(row).map((act) => {
        const word = act === 'assess' && row.assessment !== null ? 'Assess again' : WORDS[act];
        return (
          <Button
            key={act}
            onClick={() => acts.ask({ act, row })}
            aria-label={`${word}: ${row.code}, ${row.subject}`}
          >
            {word}
          </Button>
        );
      })}
    </span>
  );
}

/** The form of the act asked for, in a sheet. */
export function AskedAct({ acts: { asked, ask } }: { readonly acts: HeldActs }) {
  if (asked === null) return null;
  const { act, row } = asked;
  const close = () => ask(null);
  const key = heldKey(row);
  if (act === 'met') return <MetForm key={key} row={row} onClose={close} />;
  if (act === 'assess') return <AssessForm key={key} row={row} onClose={close} />;
  return <VaryForm key={key} row={row} onClose={close} />;
}

export type { HeldActs };
