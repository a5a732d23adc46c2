import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { calendarDate } from '../../format/utc-date.js';
import { momentText } from '../../format/when.js';
import { useMay } from '../../server/authority.js';
import { type Serviceability, serviceabilityQuery } from '../../server/shops/shop-records.js';
import { Button } from '../../ui/actions/button.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { Answered } from '../../ui/messages/answered.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import { PreservationForm } from './preservation-form.js';
import { TagForm } from './tag-form.js';

const STATES = {
  serviceable: 'Serviceable',
  unserviceable: 'Unserviceable',
  quarantine: 'Quarantine',
} as const;

function Standing({ found: { fit, reasons, openVisit, tags } }: { readonly found: Serviceability }) {
  return (
    <>
      <p>
        {fit ? (
          <StatusMark
            status={tags.length === 0 ? 'not-verified' : 'in-limits'}
            word={tags.length === 0 ? 'No tag recorded' : 'Nothing is held against fitting it'}
          />
        ) : (
          <StatusMark status="blocked" word="May not be fitted" />
        )}
      </p>
      {reasons.map(({ code, text }) => (
        <p key={code}>{text}</p>
      ))}
      {openVisit !== null && (
        <p>
          <RouteLink href={`/shop-visits/${openVisit.id}`}>
            Its shop visit, {openVisit.orderReference}
          </RouteLink>
        </p>
      )}
    </>
  );
}

function Kept({ found: { tags, preservations } }: { readonly found: Serviceability }) {
  return (
    <ul className="plain-list">
      {tags.map(({ id, status, tagNumber, reason, certificate, issuedBy, at, voided, voidReason }) => (
        <li key={id}>
          {voided ? <s>{STATES[status]}</s> : <strong>{STATES[status]}</strong>}: tag {tagNumber},{' '}
          {momentText(at)}, by {issuedBy}. {reason}
          {certificate !== null && ` Certificate ${certificate}.`}
          {voidReason !== null && ` Voided: ${voidReason}`}
        </li>
      ))}
      {preservations.map(({ id, method, goodUntil, document, over, counts, voided, voidReason }) => (
        <li key={id}>
          {voided ? <s>Preserved</s> : <strong>Preserved</strong>} until {calendarDate(goodUntil)}: {method},{' '}
          {document}. {over && counts && <StatusMark status="soon" word="Preservation over" />}
          {voidReason !== null && ` Voided: ${voidReason}`}
        </li>
      ))}
    </ul>
  );
}

/** What tags, shop and preservation say of a component. */
export function ServiceabilityPanel({ componentId }: { readonly componentId: string }) {
  const query = useQuery(serviceabilityQuery(componentId));
  const may = useMay('tag-components');
  const [adding, setAdding] = useState<'tag' | 'preservation' | null>(null);
  if (query.error instanceof ProblemError && query.error.status === 404) return null;
  const close = () => setAdding(null);
  return (
    <section className="stack" aria-labelledby="serviceability">
      <h2 id="serviceability" className="section-heading">
        Serviceability and preservation
      </h2>
      <Answered query={query} doing="Reading the tags" lines={2}>
        {(found) => (
          <>
            <Standing found={found} />
            <Kept found={found} />
          </>
        )}
      </Answered>
      {may && (
        <div className="row no-print">
          <Button onClick={() => setAdding('tag')}>Record a tag</Button>
          <Button onClick={() => setAdding('preservation')}>Record a preservation</Button>
        </div>
      )}
      <SheetDialog title="Record a tag" shape="sheet" open={adding === 'tag'} onClose={close}>
        <TagForm componentId={componentId} onDone={close} />
      </SheetDialog>
      <SheetDialog
        title="Record a preservation"
        shape="sheet"
        open={adding === 'preservation'}
        onClose={close}
      >
        <PreservationForm componentId={componentId} onDone={close} />
      </SheetDialog>
    </section>
  );
}
