import { useQuery } from '@tanstack/react-query';
import { counted } from '../../../format/counts.js';
import { packageKind } from '../../../format/package-words.js';
import { procedureFor } from '../../../format/procedure-for.js';
import { type ProcedureRow, proceduresForQuery } from '../../../server/procedures.js';
import { Button } from '../../../ui/actions/button.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { Answered } from '../../../ui/messages/answered.js';
import { type Fact, FactList } from '../../../ui/page/fact-list.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { EMPTY_STEP, type TypedStep } from '../own-step.js';
import { OwnStepFields } from '../own-step-fields.js';
import { isOrdered } from './opening-draft.js';
import { openingId } from './opening-ids.js';
import type { SectionProps } from './work-section.js';

function Chosen({ procedure }: { readonly procedure: ProcedureRow }) {
  const { code, revision, document, documentRevision, steps, latest } = procedure;
  const madeFor = procedureFor(procedure);
  const facts: readonly Fact[] = [
    [
      'Procedure',
      <>
        <span className="serial">{code}</span>, revision {revision}, {counted(steps, 'step')}
      </>,
    ],
    ['Made from', `${document}, revision ${documentRevision}`],
    ...(madeFor === null ? [] : [['For', madeFor] as const]),
  ];
  return (
    <div className="order-there">
      <FactList className="package-facts" facts={facts} />
      <p className="quiet small">
        {madeFor === null
          ? 'It names no type and no model: look into the document whether it is for this work.'
          : 'Look into the document whether it holds for this serial number: nothing here checks that.'}
      </p>
      {!latest && <StatusMark status="soon" word="A later revision of this procedure is recorded" />}
    </div>
  );
}

function FromProcedure({ opening: { draft, set, said } }: SectionProps) {
  const query = useQuery(proceduresForQuery(draft.kind));
  return (
    <Answered query={query} doing="Reading the procedures" lines={3}>
      {(procedures) => {
        const chosen = procedures.find(({ id }) => id === draft.procedureId);
        return (
          <>
            <SelectField
              id={openingId('procedureId')}
              label="Procedure"
              hint="Each step of the package is made from it, as its revision has it"
              unchosen={
                procedures.length === 0
                  ? `No procedure for this kind is recorded: ${packageKind(draft.kind).toLowerCase()}`
                  : 'Choose the procedure'
              }
              value={draft.procedureId}
              options={procedures.map(({ id, title, revision, latest }) => ({
                value: id,
                label: `${title}, revision ${revision}${latest ? '' : ' (not the latest)'}`,
              }))}
              onChange={({ target }) => set({ procedureId: target.value })}
              error={said('procedureId')}
            />
            {chosen !== undefined && <Chosen procedure={chosen} />}
          </>
        );
      }}
    </Answered>
  );
}

function OwnSteps({ opening: { draft, set, said } }: SectionProps) {
  const { ownSteps } = draft;
  const change = (place: number, part: Partial<TypedStep>) =>
    set({ ownSteps: ownSteps.map((step, index) => (index === place ? { ...step, ...part } : step)) });
  return (
    <>
      {isOrdered(draft) && (
        <p>
          The steps that make the order come first by themselves: taking off with its serial, and putting on
          with papers, serial and an inspection. Add below what else is to be done.
        </p>
      )}
      {said('steps') !== null && (
        <p className="field-error" id="opening-steps-error">
          {said('steps')}
        </p>
      )}
      <ol className="plain-list own-steps">
        {ownSteps.map((step, place) => (
          // Steps are told apart by their place alone while they are typed.
          // biome-ignore lint/suspicious/noArrayIndexKey: place is their identity
          <li key={place} className="package-part">
            <div className="own-step-head">
              <h3>Step {place + 1}</h3>
              <Button
                kind="quiet"
                aria-label={`Remove step ${place + 1}`}
                onClick={() => set({ ownSteps: ownSteps.filter((_, index) => index !== place) })}
              >
                Remove
              </Button>
            </div>
            <OwnStepFields
              ids={{
                title: openingId(`steps.${place}.title`),
                text: openingId(`steps.${place}.text`),
              }}
              step={step}
              set={(part) => change(place, part)}
              said={(field) => said(`steps.${place}.${field}`)}
              autoFocus={place > 0}
            />
          </li>
        ))}
      </ol>
      <div>
        <Button id={openingId('steps')} onClick={() => set({ ownSteps: [...ownSteps, EMPTY_STEP] })}>
          {ownSteps.length === 0 ? 'Add a step' : 'Add another step'}
        </Button>
      </div>
    </>
  );
}

const FROM = [
  { value: 'procedure', label: 'From a procedure' },
  { value: 'own', label: 'Of our own, typed here' },
];

/** The steps of the package: made from a procedure, or typed. */
export function StepsSection({ opening }: SectionProps) {
  const { draft, set } = opening;
  return (
    <>
      <SelectField
        label="Where the steps come from"
        value={draft.stepsFrom}
        options={FROM}
        onChange={({ target }) => {
          const own = target.value === 'own';
          set({
            stepsFrom: own ? 'own' : 'procedure',
            ...(own && draft.ownSteps.length === 0 && !isOrdered(draft) ? { ownSteps: [EMPTY_STEP] } : {}),
          });
        }}
      />
      {draft.stepsFrom === 'procedure' ? <FromProcedure opening={opening} /> : <OwnSteps opening={opening} />}
    </>
  );
}
