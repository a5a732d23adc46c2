import { useQuery } from '@tanstack/react-query';
import { parseHours } from '../../../format/hours.js';
import { momentText } from '../../../format/when.js';
import { useAct } from '../../../server/act.js';
import {
  COMPONENTS_KEY,
  type Component,
  type ComponentFacts,
  factsQuery,
} from '../../../server/components.js';
import { FLEET_KEY } from '../../../server/fleet.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { RegisterForm, WordsField } from '../form-parts.js';
import { missing, whole } from '../plain-checks.js';
import { acceptGap, type NewGapAcceptance, type RecordedFact } from './fact-acts.js';

interface Typed {
  /** 'gap ID', 'opening ID', or '' for all that has none of its own. */
  readonly of: string;
  /** Typed as hours; the server's name for it is minutes. */
  readonly minutes: string;
  readonly cycles: string;
  readonly acceptedBy: string;
  readonly reference: string;
}

const check = (typed: Typed): Faults => {
  const time = parseHours(typed.minutes);
  return {
    ...(typed.minutes.trim() !== '' && !time.ok ? { minutes: time.reason } : {}),
    ...(typed.cycles.trim() !== '' && whole(typed.cycles) === null
      ? { cycles: 'Enter whole cycles, for example 120' }
      : {}),
    ...missing(typed, { acceptedBy: 'Enter who accepted it', reference: 'Enter the paper that says so' }),
  };
};

/** What can be accepted: each gap, each opening whose trace is not shown, or all the rest as one. */
function choices({ traceGaps, openings, gapAcceptances }: ComponentFacts) {
  const taken = new Set(
    gapAcceptances
      .filter(({ voided }) => !voided)
      .map(({ traceGapId, openingId }) => traceGapId ?? openingId),
  );
  return [
    ...traceGaps
      .filter(({ id, voided }) => !voided && !taken.has(id))
      .map(({ id, from, to }) => ({
        value: `gap ${id}`,
        label: `The gap from ${momentText(from)} to ${momentText(to)}`,
      })),
    ...openings
      .filter(({ id, voided, trace }) => !voided && trace === 'not-shown' && !taken.has(id))
      .map(({ id, at }) => ({
        value: `opening ${id}`,
        label: `The balance of ${momentText(at)}, trace not shown`,
      })),
  ];
}

interface AcceptanceFormProps {
  readonly component: Component;
  readonly onDone: (done: RecordedFact) => void;
}

/** That somebody accepts the most that may have been used where the records do not say. */
export function AcceptanceForm({ component, onDone }: AcceptanceFormProps) {
  const facts = useQuery(factsQuery(component.id)).data;
  const offered = facts === undefined ? [] : choices(facts);
  const act = useAct({
    perform: acceptGap,
    onDone,
    refresh: [COMPONENTS_KEY, FLEET_KEY, ['history'], ['due']],
  });
  const form = useActForm({
    start: { of: '', minutes: '', cycles: '', acceptedBy: '', reference: '' },
    check,
    words: (typed: Typed): NewGapAcceptance => {
      const time = parseHours(typed.minutes);
      const cycles = whole(typed.cycles);
      const [kind, id] = typed.of.split(' ');
      return {
        componentId: component.id,
        ...(kind === 'gap' && id !== undefined ? { traceGapId: id } : {}),
        ...(kind === 'opening' && id !== undefined ? { openingId: id } : {}),
        ...(time.ok ? { minutes: time.minutes } : {}),
        ...(cycles === null ? {} : { cycles }),
        acceptedBy: typed.acceptedBy.trim(),
        reference: typed.reference.trim(),
      };
    },
    act,
  });
  const { typed, change, field } = form;
  // The server names what it refuses by one of two fields; one choice stands for both.
  const of = field('traceGapId');
  return (
    <RegisterForm form={form} act="Record the acceptance">
      <p>
        From then on the lives that rest on these records count the most that may have been used. They stay
        marked as resting on an acceptance.
      </p>
      <SelectField
        {...of}
        error={of.error ?? field('openingId').error}
        label="Accepted for"
        unchosen="All that has no acceptance of its own, unknown ratings too"
        options={offered}
        value={typed.of}
        onChange={({ target }) => change({ of: target.value })}
      />
      <div className="sub-row-fields">
        <WordsField
          form={form}
          name="minutes"
          label="Hours at most"
          hint="For example 250:00"
          optional
          mono
        />
        <WordsField form={form} name="cycles" label="Cycles at most" hint="For example 120" optional mono />
      </div>
      <p className="field-hint">
        The most that may have been used in it. Left empty, that amount stays not known: not known is not
        zero.
      </p>
      <WordsField form={form} name="acceptedBy" label="Accepted by" hint="The person or authority" />
      <WordsField form={form} name="reference" label="Reference" hint="The paper that says so" />
    </RegisterForm>
  );
}
