import { CheckField } from '../../ui/fields/check-field.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import type { TypedStep } from './own-step.js';

interface OwnStepFieldsProps {
  readonly ids: { readonly title: string; readonly text: string };
  readonly step: TypedStep;
  readonly set: (change: Partial<TypedStep>) => void;
  readonly said: (field: 'title' | 'text') => string | null;
  readonly autoFocus?: boolean;
}

/** What is to be done, how, and whether another person looks at it. */
export function OwnStepFields({ ids, step, set, said, autoFocus = false }: OwnStepFieldsProps) {
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
      <CheckField
        label="Another person must inspect it independently"
        checked={step.inspected}
        onChange={({ target }) => set({ inspected: target.checked })}
      />
    </>
  );
}
