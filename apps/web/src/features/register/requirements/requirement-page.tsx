import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { counted } from '../../../format/counts.js';
import { calendarDate } from '../../../format/utc-date.js';
import { useMay } from '../../../server/authority.js';
import { Button } from '../../../ui/actions/button.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { type Fact, FactList } from '../../../ui/page/fact-list.js';
import { Voided } from '../../../ui/status/voided.js';
import { RegisterFrame } from '../register-frame.js';
import { VoidDialog } from '../void-dialog.js';
import { AccomplishmentTable } from './held/accomplishment-table.js';
import { AssessmentTable, VariationTable } from './held/found-tables.js';
import { AskedAct, useHeldActs } from './held/held-acts.js';
import { StatusTable } from './held/status-table.js';
import { voidRequirement } from './requirement-acts.js';
import {
  type Requirement,
  type RequirementView,
  requirementQuery,
  WHAT_IS_DUE,
} from './requirement-queries.js';
import { kindWord, scopeText } from './requirement-words.js';
import { REQUIREMENTS_KEPT } from './requirements-page.js';
import { ruleSentences, ruleText } from './rule/rule-words.js';

const linked = (term: string, link: Requirement['supersedes']): readonly Fact[] =>
  link === null
    ? []
    : [
        [
          term,
          <RouteLink key={link.id} href={`/requirements/${link.id}`}>
            <span className="serial">{link.code}</span>
          </RouteLink>,
        ],
      ];

const linksOf = ({ supersedes, supersededBy, terminates }: Requirement): readonly Fact[] => [
  ...linked('Takes the place of', supersedes),
  ...linked('Its place is taken by', supersededBy),
  ...linked('Met, it ends', terminates),
];

/** Every revision of its code, the newest first, each with its own rule. */
function Revisions({ view: { requirement, revisions } }: { readonly view: RequirementView }) {
  if (revisions.length < 2) return null;
  return (
    <>
      <h2 className="section-heading">Revisions</h2>
      <ul className="plain-list revisions">
        {revisions.map((revision) => (
          <li key={revision.id}>
            {revision.id === requirement.id ? (
              <strong className="serial">{revision.revision}</strong>
            ) : (
              <RouteLink href={`/requirements/${revision.id}`}>
                <span className="serial">{revision.revision}</span>
              </RouteLink>
            )}
            , effective on {calendarDate(revision.effectiveOn)}
            {revision.inForce && ', in force'}: {ruleText(revision)}
            {revision.voided && (
              <>
                {' '}
                <Voided reason={revision.voidReason} />
              </>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

function Identity({ requirement }: { readonly requirement: Requirement }) {
  const { title, kind, document, revision, effectiveOn } = requirement;
  const facts: readonly Fact[] = [
    ['Title', title],
    ['Kind', kindWord(kind)],
    ['For', scopeText(requirement)],
    ['Document', `${document}, revision ${revision}, effective on ${calendarDate(effectiveOn)}`],
    ...linksOf(requirement),
    [
      'Whether it applies',
      requirement.needsAssessment ? 'Must be assessed, revision by revision' : 'By what it is for alone',
    ],
  ];
  return <FactList facts={facts} />;
}

/** What its being voided or superseded means, in a sentence. */
function Standing({ requirement: { inForce, voided, voidReason } }: { readonly requirement: Requirement }) {
  if (inForce) return null;
  return voided ? (
    <p>
      <strong>Voided: “{voidReason ?? 'no reason recorded'}”.</strong> Nothing is due by it.
    </p>
  ) : (
    <p>A later revision of it counts. Nothing is due by this one; what was met by it counts on.</p>
  );
}

/** The whole rule in plain words. */
function Rule({ requirement }: { readonly requirement: Requirement }) {
  return (
    <section className="rule-preview" aria-labelledby="rule">
      <h2 id="rule">What it means</h2>
      <ul>
        {ruleSentences(requirement).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

function Sections({ view }: { readonly view: RequirementView }) {
  const mayKeep = useMay('keep-requirements');
  const mayRecord = useMay('keep-records');
  const acts = useHeldActs();
  const [voiding, setVoiding] = useState(false);
  const { requirement, statuses, accomplishments, assessments, variations } = view;
  return (
    <div className="stack">
      <Identity requirement={requirement} />
      <Rule requirement={requirement} />
      <Standing requirement={requirement} />
      {mayKeep && !requirement.voided && (
        <div className="no-print">
          <Button onClick={() => setVoiding(true)}>Void this requirement</Button>
        </div>
      )}
      {requirement.inForce && (
        <>
          <h2 className="section-heading">Held against {counted(statuses.length, 'subject')}</h2>
          <StatusTable
            ofOne
            caption="What it is held against"
            rows={statuses}
            acts={acts}
            empty={<EmptyState>Nothing in the register is what it is for.</EmptyState>}
          />
        </>
      )}
      <h2 className="section-heading">When it was met</h2>
      <AccomplishmentTable rows={accomplishments} may={mayRecord} />
      {(requirement.needsAssessment || assessments.length > 0) && (
        <>
          <h2 className="section-heading">Whether it applies</h2>
          <AssessmentTable rows={assessments} may={mayKeep} />
        </>
      )}
      {(requirement.variation !== null || variations.length > 0) && (
        <>
          <h2 className="section-heading">Approved variations</h2>
          <VariationTable rows={variations} may={mayKeep} />
        </>
      )}
      <Revisions view={view} />
      <AskedAct acts={acts} />
      {voiding && (
        <VoidDialog
          id={requirement.id}
          what={`requirement ${requirement.code}`}
          consequence="It stays in sight, struck through, and nothing is due by it from now on. An earlier revision counts again, if there is one."
          perform={voidRequirement}
          refresh={WHAT_IS_DUE}
          said="What is due was computed again."
          onClose={() => setVoiding(false)}
        />
      )}
    </div>
  );
}

/** One requirement: what it asks, what it is held against, and when it was met. */
export function RequirementPage() {
  const { requirementId } = useParams({ from: '/signed-in/requirements/$requirementId' });
  const view = useQuery(requirementQuery(requirementId));
  return (
    <RegisterFrame title="Requirement" serial={view.data?.requirement.code} kept={REQUIREMENTS_KEPT}>
      <Answered query={view} doing="Reading the requirement" lines={8}>
        {(data) => <Sections view={data} />}
      </Answered>
    </RegisterFrame>
  );
}
