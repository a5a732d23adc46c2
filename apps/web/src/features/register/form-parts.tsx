import type { ReactNode } from 'react';
import { Button } from '../../ui/actions/button.js';
import type { ActForm } from '../../ui/fields/act-form.js';
import { TextField, type TextFieldProps } from '../../ui/fields/text-field.js';
import { ErrorSummary } from '../../ui/messages/error-summary.js';

interface FormProps<Typed> {
  readonly form: ActForm<Typed>;
  /** The word of the button: 'Add the airframe'. */
  readonly act: string;
  readonly children: ReactNode;
}

/** A form of the register: what is wrong on top, the fields, the one button. */
export function RegisterForm<Typed>({ form, act, children }: FormProps<Typed>) {
  return (
    <form className="stack" noValidate onSubmit={form.submit}>
      <ErrorSummary messages={form.messages} attempt={form.attempt} />
      {children}
      <div>
        <Button type="submit" kind="primary" busy={form.busy}>
          {form.busy ? 'Saving' : act}
        </Button>
      </div>
    </form>
  );
}

type TextNames<Typed> = { [Name in keyof Typed]: Typed[Name] extends string ? Name : never }[keyof Typed] &
  string;

interface WordsFieldProps<Typed>
  extends Omit<TextFieldProps, 'form' | 'name' | 'value' | 'onChange' | 'error' | 'id'> {
  readonly form: ActForm<Typed>;
  readonly name: TextNames<Typed>;
}

/** One line of text of a form, by its name. */
export function WordsField<Typed extends object>({ form, name, ...rest }: WordsFieldProps<Typed>) {
  const value: unknown = form.typed[name];
  return (
    <TextField
      {...rest}
      {...form.field(name)}
      value={typeof value === 'string' ? value : ''}
      onChange={(event) => form.change({ [name]: event.target.value } as unknown as Partial<Typed>)}
    />
  );
}
