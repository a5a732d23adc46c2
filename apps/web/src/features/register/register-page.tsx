import { useQuery } from '@tanstack/react-query';
import { counted } from '../../format/counts.js';
import { componentChoiceQuery } from '../../server/components.js';
import {
  airframesQuery,
  airframeTypesQuery,
  engineModelsQuery,
  lifeLimitsQuery,
  locationsQuery,
} from '../../server/fleet.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Loading } from '../../ui/messages/loading.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import { RegisterFrame } from './register-frame.js';
import { type Entered, registerSteps, type Step } from './steps.js';

function Standing({ step }: { readonly step: Step }) {
  if (step.waitsFor !== null) return <StatusMark status="blocked" word={`Waits: ${step.waitsFor}`} />;
  if (step.count === null) return null;
  return step.count.amount === 0 ? (
    <StatusMark status="open" word="Nothing yet" />
  ) : (
    <StatusMark
      status="signed"
      word={`${counted(step.count.amount, step.count.noun)}${step.count.more ? ' or more' : ''}`}
    />
  );
}

function Steps({ entered }: { readonly entered: Entered }) {
  return (
    <ol className="register-steps">
      {registerSteps(entered).map((step) => (
        <li
          key={step.title}
          className={step.waitsFor === null ? 'register-step' : 'register-step register-step-blocked'}
        >
          <div>
            <h2>{step.title}</h2>
            <p>{step.why}</p>
            <Standing step={step} />
          </div>
          <ActionLink href={step.href}>{step.word}</ActionLink>
        </li>
      ))}
    </ol>
  );
}

/** What the records rest on, in the order in which it is entered. */
export function RegisterPage() {
  const types = useQuery(airframeTypesQuery);
  const models = useQuery(engineModelsQuery);
  const airframes = useQuery(airframesQuery);
  const components = useQuery(componentChoiceQuery({}));
  const limits = useQuery(lifeLimitsQuery);
  const locations = useQuery(locationsQuery);
  const all = [types, models, airframes, components, limits, locations];
  const failed = all.find(({ error, data }) => error !== null && data === undefined);
  const known = all.every(({ data }) => data !== undefined);
  return (
    <RegisterFrame title="Register" below={<p>What the records rest on. A step shows what it waits for.</p>}>
      {failed !== undefined && (
        <ProblemPanel
          error={failed.error}
          doing="Reading the register"
          onRetry={() => {
            for (const query of all) void query.refetch();
          }}
        />
      )}
      {!known && failed === undefined && <Loading label="Reading the register" lines={6} />}
      {known && (
        <Steps
          entered={{
            airframeTypes: types.data?.length ?? 0,
            engineModels: models.data?.length ?? 0,
            airframes: airframes.data?.length ?? 0,
            lifeLimits: limits.data?.length ?? 0,
            locations: locations.data?.length ?? 0,
            components: components.data?.rows.length ?? 0,
            moreComponents: (components.data?.next ?? null) !== null,
          }}
        />
      )}
    </RegisterFrame>
  );
}
