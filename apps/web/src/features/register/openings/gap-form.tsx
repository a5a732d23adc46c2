import { useAct } from '../../../server/act.js';
import { COMPONENTS_KEY, type Component } from '../../../server/components.js';
import { FLEET_KEY } from '../../../server/fleet.js';
import { type Faults, useActForm } from '../../../ui/fields/act-form.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { RegisterForm } from '../form-parts.js';
import { BoundaryFields } from '../placing/boundary-fields.js';
import {
  BLANK_BOUNDARY,
  boundaryWords,
  faultsOfBoundary,
  type TypedBoundary,
} from '../placing/typed-boundary.js';
import { missing, under } from '../plain-checks.js';
import { addTraceGap, type NewTraceGap, type RecordedFact } from './fact-acts.js';

interface Typed {
  readonly fromBoundary: TypedBoundary;
  readonly toBoundary: TypedBoundary;
  readonly note: string;
}

const START: Typed = { fromBoundary: BLANK_BOUNDARY, toBoundary: BLANK_BOUNDARY, note: '' };

const check = (typed: Typed): Faults => ({
  ...under('fromBoundary', faultsOfBoundary(typed.fromBoundary)),
  ...under('toBoundary', faultsOfBoundary(typed.toBoundary)),
  ...missing(typed, { note: 'Enter what is missing' }),
});

interface GapFormProps {
  readonly component: Component;
  readonly onDone: (done: RecordedFact) => void;
}

/** A span that no record of the component covers. Its life is not verified until the worst case is accepted. */
export function GapForm({ component, onDone }: GapFormProps) {
  const act = useAct({
    perform: addTraceGap,
    onDone,
    refresh: [COMPONENTS_KEY, FLEET_KEY, ['history'], ['due']],
  });
  const form = useActForm({
    start: START,
    check,
    words: ({ fromBoundary, toBoundary, note }: Typed): NewTraceGap => ({
      componentId: component.id,
      fromBoundary: boundaryWords(fromBoundary),
      toBoundary: boundaryWords(toBoundary),
      note: note.trim(),
    }),
    act,
  });
  const { typed, change, field } = form;
  const airframeKnown = component.place.airframeId !== null;
  return (
    <RegisterForm form={form} act="Record the gap">
      <p>
        Lives and requirements that rest on these records are not verified from then on, until somebody
        accepts the most that may have been used.
      </p>
      <BoundaryFields
        legend="It begins"
        value={typed.fromBoundary}
        onChange={(fromBoundary) => change({ fromBoundary })}
        field={(name) => field(`fromBoundary.${name}`)}
        airframeKnown={airframeKnown}
      />
      <BoundaryFields
        legend="It ends"
        value={typed.toBoundary}
        onChange={(toBoundary) => change({ toBoundary })}
        field={(name) => field(`toBoundary.${name}`)}
        airframeKnown={airframeKnown}
      />
      <TextAreaField
        {...field('note')}
        label="What is missing"
        hint="For example: no log pages between two operators"
        value={typed.note}
        onChange={({ target }) => change({ note: target.value })}
      />
    </RegisterForm>
  );
}
