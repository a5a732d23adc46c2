import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { counted } from '../../format/counts.js';
import { useAct } from '../../server/act.js';
import { useMay } from '../../server/authority.js';
import { airframeQuery } from '../../server/fleet.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { Answered } from '../../ui/messages/answered.js';
import { fieldMessages } from '../../ui/messages/field-messages.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { type Asked, lineOf, PlanForm } from './plan-form.js';
import { PlannedRates } from './planned-rates.js';
import { PLANNING_KEYS, planFlights, plannedRatesQuery, readinessQuery } from './planning-data.js';
import { ReadinessAnswer } from './readiness-answer.js';
import './planned-flying.css';

/** What the server says of single flights, by the line they were typed in. */
function Refused({ error, asked }: { readonly error: unknown; readonly asked: Asked }) {
  const messages = fieldMessages(error);
  if (messages.length === 0) return null;
  return (
    <div role="alert">
      <ul className="readiness-faults">
        {messages.map(({ path, message }) => (
          <li key={`${path} ${message}`}>
            {lineOf(path, asked.plan)}
            {message}
          </li>
        ))}
      </ul>
    </div>
  );
}

function KeepFlights({ airframeId, asked }: { readonly airframeId: string; readonly asked: Asked }) {
  const may = useMay('plan-flying');
  const act = useAct({ perform: planFlights, refresh: PLANNING_KEYS });
  const { flights } = asked.body;
  if (!may || flights === undefined) return null;
  return (
    <div className="row no-print">
      <Button busy={act.isPending} onClick={() => act.mutate({ airframeId, flights })}>
        Keep as the plan
      </Button>
      <p role="status">
        {act.data === undefined
          ? 'They take the place of the flights planned that are still to come.'
          : `${counted(act.data.planned, 'flight')} planned${act.data.replaced > 0 ? `, ${act.data.replaced} replaced` : ''}.`}
      </p>
      <Refused error={act.error} asked={asked} />
    </div>
  );
}

function Answer({ airframeId, asked }: { readonly airframeId: string; readonly asked: Asked }) {
  const query = useQuery(readinessQuery(airframeId, asked.body));
  return (
    <>
      <Refused error={query.error} asked={asked} />
      <Answered query={query} doing="Working out readiness" lines={6}>
        {(answer) => (
          <>
            <ReadinessAnswer answer={answer} />
            <KeepFlights airframeId={airframeId} asked={asked} />
          </>
        )}
      </Answered>
    </>
  );
}

/** Which of the flights to come an airframe may make, and what they reach. */
export function ReadinessPage() {
  const { airframeId } = useParams({ from: '/signed-in/positions/$airframeId/readiness' });
  const airframe = useQuery(airframeQuery(airframeId)).data;
  const rates = useQuery(plannedRatesQuery(airframeId)).data;
  const [asked, setAsked] = useState<Asked>({ body: {}, plan: null });
  return (
    <div className="stack">
      <PageHeading
        title="Readiness"
        serial={airframe?.registration}
        below={<p>What planned flying reaches, and the last flight that may be made.</p>}
        actions={
          <>
            <ActionLink href={`/positions/${airframeId}`}>Airframe</ActionLink>
            <ActionLink href={`/due?airframe=${airframeId}`}>Due</ActionLink>
            <Button onClick={() => window.print()}>Print</Button>
          </>
        }
      />
      <PlanForm planned={rates?.find(({ inForce }) => inForce)} onAsk={setAsked} />
      <Answer airframeId={airframeId} asked={asked} />
      <PlannedRates airframeId={airframeId} />
    </div>
  );
}
