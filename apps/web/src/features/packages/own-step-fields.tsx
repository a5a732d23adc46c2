import { CheckField } from '../../ui/fields/check-field.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import type { Moves, OwnStep } from './package-acts.js';

/** A step of one's own, as typed. */
export interface TypedStep {
  readonly title: string;
  readonly text: string;
  readonly inspected: boolean;
  readonly moves: Moves | '';
}

export const EMPTY_STEP: TypedStep = { title: '', text: '', inspected: false, moves: '' };

export const NO_TITLE = 'Enter what is to be done, for example: Replace the fuel filter.';

const OFF = { kind: 'component-off', key: 'comes-off', label: 'Serial that comes off' } as const;
const ON = { kind: 'component-on', key: 'goes-on', label: 'Serial that goes on' } as const;
const PAPERS = { kind: 'papers', key: 'papers', label: 'Plate and release document' } as const;

/** The step as the server takes it. What moves something captures its serial; what is fitted, its papers too. */
export function ownStep({ title, text, inspected, moves }: TypedStep): OwnStep {
  return {
    title: title.trim(),
    ...(text.trim() === '' ? {} : { text: text.trim() }),
    inspection: inspected ? 'independent' : 'none',
    ...(moves === '' ? {} : { moves, captures: moves === 'removal' ? [OFF] : [PAPERS, ON] }),
  };
}

const MOVES = [
  { value: 'removal', label: 'The ordered component comes off' },
  { value: 'installation', label: 'The ordered component goes on' },
];

interface OwnStepFieldsProps {
  readonly ids: { readonly title: string; readonly text: string };
  readonly step: TypedStep;
  readonly set: (change: Partial<TypedStep>) => void;
  readonly said: (field: 'title' | 'text') => string | null;
  /** Whether the package has an order, so that a step can move something. */
  readonly ordered: boolean;
  readonly autoFocus?: boolean;
}

/** What is to be done, how, and whether another person looks at it. */
export function OwnStepFields({ ids, step, set, said, ordered, autoFocus = false }: OwnStepFieldsProps) {
  return (
    <>
      <TextField
        id={ids.title}
        label="What is to be done"
        hint="One action, the verb first"
        maxLength={300}
        autoFocus={autoFocus}
        value={step.title}
        onChange={({ target }) => set({ title: target.value })}
        error={said('title')}
      />
      <TextAreaField
        id={ids.text}
        label="How"
        optional
        hint="With the document behind it"
        maxLength={2000}
        value={step.text}
        onChange={({ target }) => set({ text: target.value })}
        error={said('text')}
      />
      {ordered && (
        <SelectField
          label="What signing it records"
          hint="A step that moves the component asks for its serial, and for its papers before it goes on"
          unchosen="That it was done"
          value={step.moves}
          options={MOVES}
          onChange={({ target }) => set({ moves: target.value as TypedStep['moves'] })}
        />
      )}
      <CheckField
        label="Another person must inspect it independently"
        checked={step.inspected}
        onChange={({ target }) => set({ inspected: target.checked })}
      />
    </>
  );
}
