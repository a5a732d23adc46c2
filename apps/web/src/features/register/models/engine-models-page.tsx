import { useQuery } from '@tanstack/react-query';
import { useMay } from '../../../server/authority.js';
import {
  type AirframeType,
  airframeTypesQuery,
  type EngineModel,
  engineModelsQuery,
} from '../../../server/fleet.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { announce } from '../../../ui/messages/announcements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { FactList } from '../../../ui/page/fact-list.js';
import { RegisterFrame } from '../register-frame.js';
import { EngineModelForm, LIFE_METHODS } from './engine-model-form.js';
import { RuleHistory } from './rule-history.js';

interface ModelProps {
  readonly model: EngineModel;
  readonly types: readonly AirframeType[];
}

function Model({ model, types }: ModelProps) {
  const method = LIFE_METHODS.find(({ value }) => value === model.lifeMethod)?.label ?? model.lifeMethod;
  const ratings = model.ratings
    .map(({ code, description }) => [code, description].filter(Boolean).join(': '))
    .join('; ');
  return (
    <section className="sheet stack" aria-label={`${model.maker} ${model.designation}`}>
      <h2>
        {model.maker} <span className="serial">{model.designation}</span>
        {model.kind === 'apu' && ', auxiliary power unit'}
      </h2>
      <FactList
        facts={[
          ['Ratings', ratings === '' ? 'None recorded' : ratings],
          ['Lives at several ratings', method],
          ['Document', model.lifeSource],
        ]}
      />
      <h3>Cycle rules</h3>
      <RuleHistory model={model} types={types} />
      <p>
        <RouteLink href={`/register/life-limits?find=${encodeURIComponent(model.designation)}`}>
          Life limits of {model.designation}
        </RouteLink>
      </p>
    </section>
  );
}

/** The models of engines: ratings and cycle rules. */
export function EngineModelsPage() {
  const models = useQuery(engineModelsQuery);
  const types = useQuery(airframeTypesQuery).data ?? [];
  const may = useMay('keep-records');
  return (
    <RegisterFrame
      title="Engine models"
      add={{
        word: 'Add an engine model',
        form: (close) => (
          <EngineModelForm
            onAdded={({ maker, designation }) => {
              announce(`${maker} ${designation} was added.`);
              close();
            }}
          />
        ),
      }}
    >
      <Answered query={models} doing="Reading the engine models">
        {(all) =>
          all.length === 0 ? (
            <EmptyState>
              No engine model is recorded. It says how flights make cycles and at which ratings an engine runs
              {may ? '. Add one above.' : '.'}
            </EmptyState>
          ) : (
            <div className="stack">
              {all.map((model) => (
                <Model key={model.id} model={model} types={types} />
              ))}
            </div>
          )
        }
      </Answered>
    </RegisterFrame>
  );
}
