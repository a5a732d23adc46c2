import { useQuery } from '@tanstack/react-query';
import type { ActForm } from '../../../../ui/fields/act-form.js';
import { CheckField } from '../../../../ui/fields/check-field.js';
import { SelectField } from '../../../../ui/fields/select-field.js';
import { WordsField } from '../../form-parts.js';
import { requirementsQuery } from '../requirement-queries.js';
import type { TypedRequirement } from './typed-requirement.js';

interface OfFormProps {
  readonly form: ActForm<TypedRequirement>;
}

const CREDITS = [
  { value: 'revisions', label: 'What earlier revisions of its code were met by' },
  { value: 'superseded', label: 'That, and what it supersedes' },
  { value: 'none', label: 'Nothing: all must be met anew' },
] as const;

/** Which of them alone it is for: serial numbers, and what was embodied. */
export function OnlyFields({ form }: OfFormProps) {
  return (
    <>
      {form.typed.anchor !== 'position' && (
        <div className="sub-row-fields">
          <WordsField
            form={form}
            name="serialFrom"
            label="From serial number"
            hint="Empty: from the first"
            optional
            mono
          />
          <WordsField
            form={form}
            name="serialTo"
            label="To serial number"
            hint="Empty: to the last"
            optional
            mono
          />
        </div>
      )}
      <div className="sub-row-fields">
        <WordsField
          form={form}
          name="onlyWith"
          label="Only where these were met"
          hint="Codes, with commas between"
          optional
          mono
        />
        <WordsField
          form={form}
          name="unlessWith"
          label="Not where one of these was met"
          hint="Codes, with commas between"
          optional
          mono
        />
      </div>
    </>
  );
}

/** What it supersedes, what it ends, and what of before counts for it. */
export function BearingFields({ form }: OfFormProps) {
  const { typed, change, field } = form;
  const others = (useQuery(requirementsQuery).data ?? [])
    .filter(({ inForce, code }) => inForce && code !== typed.code.trim())
    .map(({ id, code, title }) => ({ value: id, label: `${code}, ${title}` }));
  return (
    <>
      {typed.kind === 'bulletin' && (
        <CheckField
          {...field('mandatory')}
          label="Mandatory: whether it applies must be assessed, as of a directive"
          checked={typed.mandatory}
          onChange={({ target }) => change({ mandatory: target.checked })}
        />
      )}
      <div className="sub-row-fields">
        <SelectField
          {...field('supersedesId')}
          label="It takes the place of"
          unchosen="None of another code"
          options={others}
          value={typed.supersedesId}
          onChange={({ target }) => change({ supersedesId: target.value })}
        />
        <SelectField
          {...field('terminatesId')}
          label="Met, it ends"
          unchosen="None"
          options={others}
          value={typed.terminatesId}
          onChange={({ target }) => change({ terminatesId: target.value })}
        />
      </div>
      <SelectField
        {...field('credit')}
        label="What counts that was met before"
        options={CREDITS}
        value={typed.credit}
        onChange={({ target }) =>
          change({ credit: CREDITS.find(({ value }) => value === target.value)?.value ?? 'revisions' })
        }
      />
    </>
  );
}
