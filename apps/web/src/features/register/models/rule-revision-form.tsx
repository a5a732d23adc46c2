import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import type { QueryKey } from '@tanstack/react-query';
import { parseDate } from '../../../format/utc-moment.js';
import { type ActHeaders, useAct } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import type { AirframeType } from '../../../server/fleet.js';
import { useActForm } from '../../../ui/fields/act-form.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { RegisterForm } from '../form-parts.js';
import { BLANK_RULE, checkRule, RuleFields, ruleWords, type TypedRule } from './rule-fields.js';

type NewRevision = components['schemas']['NewRuleRevisionDto'];

const addRevision = async (
  { modelId, ...body }: NewRevision & { readonly modelId: string },
  headers: ActHeaders,
) =>
  dataOrThrow(
    await api.POST('/api/engine-models/{id}/cycle-rules', {
      params: { path: { id: modelId } },
      body,
      headers,
    }),
  );

interface FormProps {
  readonly modelId: string;
  readonly types: readonly AirframeType[];
  readonly refresh: readonly QueryKey[];
  readonly onDone: () => void;
}

/** The next revision of a rule: its weights, and the day from which on they count. */
export function RuleRevisionForm({ modelId, types, refresh, onDone }: FormProps) {
  const act = useAct({ perform: addRevision, refresh, onDone });
  const form = useActForm({
    start: { ...BLANK_RULE, effectiveOn: '' },
    check: (typed: TypedRule & { readonly effectiveOn: string }) => {
      const day = parseDate(typed.effectiveOn);
      return { ...checkRule(typed), ...(day.ok ? {} : { effectiveOn: day.reason }) };
    },
    words: (typed) => {
      const day = parseDate(typed.effectiveOn);
      return { modelId, ...ruleWords(typed), effectiveOn: day.ok ? day.date : typed.effectiveOn };
    },
    act,
  });
  return (
    <RegisterForm form={form} act="Record the revision">
      <RuleFields rule={form.typed} put={form.change} types={types} field={form.field} />
      <TextField
        {...form.field('effectiveOn')}
        label="Counts from"
        hint="The first day, from 00:00 UTC, for example 2026-11-01"
        mono
        value={form.typed.effectiveOn}
        onChange={({ target }) => form.change({ effectiveOn: target.value })}
      />
    </RegisterForm>
  );
}
