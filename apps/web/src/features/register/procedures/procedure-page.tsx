import type { StepDefinition, StepGroup } from '@strutbook/domain/work/step.js';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { counted } from '../../../format/counts.js';
import { packageKind } from '../../../format/package-words.js';
import { podPlaceWords } from '../../../format/pod-place-words.js';
import { procedureFor } from '../../../format/procedure-for.js';
import { type Procedure, procedureQuery, proceduresQuery } from '../../../server/procedures.js';
import { Button } from '../../../ui/actions/button.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { Answered } from '../../../ui/messages/answered.js';
import { RegisterFrame } from '../register-frame.js';
import { PROCEDURES_KEPT } from './procedures-page.js';
import { StepPart } from './step-part.js';
import './procedures.css';
import { FactList } from '../../../ui/page/fact-list.js';

const LANES = { out: 'Taking out. ', in: 'Putting in. ', both: '' } as const;

const groupId = ({ letter }: StepGroup): string => `group-${letter}`;

const stepsOf = ({ key }: StepGroup, { content }: Procedure): readonly StepDefinition[] =>
  content.steps.filter(({ group }) => group === key);

function Facts({ procedure }: { readonly procedure: Procedure }) {
  const { title, revision, kind, document, documentRevision, content, contentHash } = procedure;
  const holds = content.steps.filter(({ inspection }) => inspection === 'independent').length;
  const facts = [
    ['What it is', title],
    ['Revision', revision],
    ['Work', packageKind(kind)],
    ['For', procedureFor(procedure) ?? 'Any type and model'],
    ['Made from', `${document}, revision ${documentRevision}`],
    ['Steps', `${content.steps.length}, ${counted(holds, 'hold point')}`],
  ] as const;
  return (
    <>
      <FactList facts={facts} />
      <p className="quiet small procedure-hash">
        SHA-256 of its content: <code>{contentHash}</code>
      </p>
    </>
  );
}

/** Where a later revision replaces this one, it says so. */
function Replaced({ procedure: { id, code } }: { readonly procedure: Procedure }) {
  const rows = useQuery(proceduresQuery).data ?? [];
  const latest = rows.find((row) => row.code === code && row.latest);
  if (latest === undefined || latest.id === id) return null;
  return (
    <p>
      <strong>A later revision is recorded: </strong>
      <RouteLink href={`/procedures/${latest.id}`}>
        {latest.code}, revision {latest.revision}
      </RouteLink>
      . Packages opened before keep the steps of this one.
    </p>
  );
}

function Groups({ procedure }: { readonly procedure: Procedure }) {
  const { groups, items, steps } = procedure.content;
  return (
    <>
      <nav className="no-print" aria-label="Groups of steps">
        <ul className="plain-list procedure-groups">
          {groups.map((group) => (
            <li key={group.key}>
              <a href={`#${groupId(group)}`}>
                {group.letter} {group.title}
              </a>{' '}
              <span className="quiet">{counted(stepsOf(group, procedure).length, 'step')}</span>
            </li>
          ))}
        </ul>
      </nav>
      {groups.map((group) => (
        <section key={group.key} className="procedure-group" aria-labelledby={groupId(group)}>
          <h2 id={groupId(group)} className="section-heading" tabIndex={-1}>
            {group.letter} {group.title}
            <span className="procedure-place">
              {LANES[group.lane]}
              {podPlaceWords(group.place)}
            </span>
          </h2>
          <ol className="plain-list">
            {stepsOf(group, procedure).map((step) => (
              <StepPart key={step.key} {...{ step, steps, items }} />
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}

/** One revision of a procedure, to be read and printed. */
export function ProcedurePage() {
  const { procedureId } = useParams({ from: '/signed-in/procedures/$procedureId' });
  const procedure = useQuery(procedureQuery(procedureId));
  return (
    <RegisterFrame
      title="Procedure"
      serial={procedure.data?.code}
      kept={PROCEDURES_KEPT}
      below={<p>Approved data, the authority and licensed staff govern; these words only repeat them.</p>}
    >
      <Answered query={procedure} doing="Reading the procedure" lines={10}>
        {(data) => (
          <div className="stack">
            <Replaced procedure={data} />
            <Facts procedure={data} />
            <p className="no-print">
              <Button onClick={() => window.print()}>Print</Button>
            </p>
            <Groups procedure={data} />
          </div>
        )}
      </Answered>
    </RegisterFrame>
  );
}
