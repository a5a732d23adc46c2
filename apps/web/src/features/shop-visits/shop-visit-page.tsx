import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { momentText } from '../../format/when.js';
import { useMay } from '../../server/authority.js';
import { type ShopVisit, shopVisitQuery, voidReturn, voidVisit } from '../../server/shops/shop-records.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { Answered } from '../../ui/messages/answered.js';
import { ObjectionList } from '../../ui/messages/objection-list.js';
import { FactList } from '../../ui/page/fact-list.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { BuildTable } from './build-table.js';
import { dispositionText } from './build-words.js';
import { DifferenceTables } from './difference-tables.js';
import { VisitMark } from './visit-columns.js';
import { VoidForm } from './void-form.js';
import './shop-visits.css';

type Returned = NonNullable<ShopVisit['returned']>;

function Sent({ visit }: { readonly visit: ShopVisit }) {
  const { component, shop, orderReference, workscope, sentAt, recordedBy } = visit;
  return (
    <FactList
      facts={[
        ['Status', <VisitMark key="status" status={visit.status} />],
        [
          'Component',
          <RouteLink key="component" href={`/components/${component.id}`}>
            {component.description} <SerialText>{component.serialNumber}</SerialText>
          </RouteLink>,
        ],
        ['Shop', shop],
        ['Order', orderReference],
        ['Sent', momentText(sentAt)],
        ['Workscope', workscope],
        ['Recorded by', recordedBy ?? 'Not recorded'],
        ...(visit.voidReason === null ? [] : [['Voided', visit.voidReason] as const]),
      ]}
    />
  );
}

function CameBack({ returned }: { readonly returned: Returned }) {
  const { returnedAt, location, report, certificate, workDone, resets, changes, recordedBy } = returned;
  const controlled = changes.filter(({ disposition }) => disposition !== null);
  return (
    <section className="stack" aria-labelledby="returned">
      <h2 id="returned" className="section-heading">
        Returned
      </h2>
      <FactList
        facts={[
          ['Returned', `${momentText(returnedAt)} to ${location}`],
          ['Shop report', report],
          ['Release certificate', certificate ?? 'None'],
          ['Work done', workDone],
          [
            'Counters that begin again',
            resets.length === 0
              ? 'None'
              : resets
                  .map(({ serialNumber, kind }) => `Since ${kind.replace('-', ' ')}, of ${serialNumber}`)
                  .join('; '),
          ],
          ...controlled.map(
            ({ outgoing, disposition, dispositionText: text, removedTo }) =>
              [
                `Removed ${outgoing?.serialNumber ?? ''}`,
                `${dispositionText(disposition)}: ${text ?? ''}; to ${removedTo ?? ''}`,
              ] as const,
          ),
          ['Recorded by', recordedBy ?? 'Not recorded'],
        ]}
      />
      {returned.objections.length > 0 && (
        <>
          <h3>Held against it</h3>
          <ObjectionList objections={returned.objections} airframeId={null} />
        </>
      )}
    </section>
  );
}

function Found({ visit }: { readonly visit: ShopVisit }) {
  const { build, returned, difference } = visit;
  return (
    <div className="stack print-landscape">
      <Sent visit={visit} />
      {returned !== null && <CameBack returned={returned} />}
      {difference !== null && <DifferenceTables difference={difference} />}
      <section className="stack" aria-labelledby="before">
        <h2 id="before" className="section-heading">
          Build at dispatch, {momentText(build.at)}
        </h2>
        <BuildTable build={build} caption="Build at dispatch" />
      </section>
      {returned !== null && (
        <section className="stack" aria-labelledby="after">
          <h2 id="after" className="section-heading">
            Build at return, {momentText(returned.build.at)}
          </h2>
          <BuildTable build={returned.build} caption="Build at return" />
        </section>
      )}
    </div>
  );
}

/** One visit to a shop: what went, what came back, what changed. Printed, it is the return list. */
export function ShopVisitPage() {
  const { visitId } = useParams({ from: '/signed-in/shop-visits/$visitId' });
  const query = useQuery(shopVisitQuery(visitId));
  const visit = query.data;
  const may = useMay('keep-records');
  const [voiding, setVoiding] = useState<'visit' | 'return' | null>(null);
  return (
    <>
      <PageHeading
        title="Shop visit of"
        serial={visit?.component.serialNumber ?? ''}
        actions={
          visit && (
            <>
              {may && visit.status === 'in-shop' && (
                <>
                  <ActionLink href={`/shop-visits/${visitId}/return`}>Record the return</ActionLink>
                  <Button onClick={() => setVoiding('visit')}>Void the visit</Button>
                </>
              )}
              {may && visit.status === 'returned' && (
                <Button onClick={() => setVoiding('return')}>Void the return</Button>
              )}
              <ActionLink href="/shop-visits">All visits</ActionLink>
              <Button onClick={() => window.print()}>Print</Button>
            </>
          )
        }
      />
      <Answered query={query} doing="Reading the shop visit" lines={8}>
        {(found) => <Found visit={found} />}
      </Answered>
      {voiding !== null && (
        <VoidForm
          id={visitId}
          what={voiding}
          consequence={
            voiding === 'visit'
              ? 'The component is again where it was before it was sent.'
              : 'All that the return recorded is voided with it, and the component is in the shop again.'
          }
          perform={voiding === 'visit' ? voidVisit : voidReturn}
          onClose={() => setVoiding(null)}
        />
      )}
    </>
  );
}
