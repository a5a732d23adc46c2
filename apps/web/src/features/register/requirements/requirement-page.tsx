import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { counted } from '../../../format/counts.js';
import { calendarDate } from '../../../format/utc-date.js';
import { useMay } from '../../../server/authority.js';
import { heldKey, type RequirementStatus } from '../../../server/requirements.js';
import { Button } from '../../../ui/actions/button.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { FactList } from '../../../ui/page/fact-list.js';
import { RegisterFrame } from '../register-frame.js';
import { VoidDialog } from '../void-dialog.js';
import { AccomplishmentTable } from './accomplishment-table.js';
import { MetForm } from './met-form.js';
import { voidRequirement } from './requirement-acts.js';
import {
  type Requirement,
  type RequirementView,
  requirementQuery,
  WHAT_IS_DUE,
} from './requirement-queries.js';
import { kindWord, ruleText, scopeText } from './requirement-words.js';
import { REQUIREMENTS_KEPT } from './requirements-page.js';
import { StatusTable } from './status-table.js';

function Identity({ requirement }: { readonly requirement: Requirement }) {
  const { title, kind, document, revision, effectiveOn } = requirement;
  const facts = [
    ['Title', title],
    ['Kind', kindWord(kind)],
    ['For', scopeText(requirement)],
    ['When', ruleText(requirement)],
    ['Document', `${document}, revision ${revision}, effective on ${calendarDate(effectiveOn)}`],
  ] as const;
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

function Sections({ view }: { readonly view: RequirementView }) {
  const mayKeep = useMay('keep-requirements');
  const mayRecord = useMay('keep-records');
  const [met, setMet] = useState<RequirementStatus | null>(null);
  const [voiding, setVoiding] = useState(false);
  const { requirement, statuses, accomplishments } = view;
  return (
    <div className="stack">
      <Identity requirement={requirement} />
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
            onMet={mayRecord ? setMet : undefined}
            empty={<EmptyState>Nothing in the register is what it is for.</EmptyState>}
          />
        </>
      )}
      <h2 className="section-heading">When it was met</h2>
      <AccomplishmentTable rows={accomplishments} may={mayRecord} />
      {met !== null && <MetForm key={heldKey(met)} row={met} onClose={() => setMet(null)} />}
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
