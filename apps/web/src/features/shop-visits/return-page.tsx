import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams } from '@tanstack/react-router';
import { useEffect } from 'react';
import { useAct } from '../../server/act.js';
import { COMPONENTS_KEY } from '../../server/components.js';
import {
  returnFromShop,
  SHOPS_KEY,
  type ShopVisit,
  shopVisitQuery,
} from '../../server/shops/shop-records.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { useActForm } from '../../ui/fields/act-form.js';
import { announce } from '../../ui/messages/announcements.js';
import { Answered } from '../../ui/messages/answered.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { ActFrame } from './act-frame.js';
import { BLANK_RETURN, faultsOfReturn, keepReturn, keptReturn, returnWords } from './return-draft.js';
import {
  CountersSection,
  KeepingSection,
  PartsSection,
  RequirementsSection,
  ReturnSection,
} from './return-sections.js';
import './shop-visits.css';

function ReturnForm({ visit }: { readonly visit: ShopVisit }) {
  const navigate = useNavigate();
  const { id, build } = visit;
  const returning = useAct({
    perform: returnFromShop,
    refresh: [SHOPS_KEY, COMPONENTS_KEY, ['history'], ['due']],
    onDone: () => {
      keepReturn(id, null);
      announce('The return is recorded.');
      void navigate({ to: '/shop-visits/$visitId', params: { visitId: id } });
    },
  });
  const form = useActForm({
    start: keptReturn(id),
    check: (typed) => faultsOfReturn(typed, build.slots),
    words: (typed) => ({ id, ...returnWords(typed, build.slots) }),
    act: returning,
  });
  const { typed } = form;
  useEffect(() => keepReturn(id, typed), [id, typed]);
  return (
    <div className="visit-form">
      <ActFrame form={form} act="Record the return">
        <ReturnSection visit={visit} form={form} />
        <PartsSection visit={visit} form={form} />
        <CountersSection visit={visit} form={form} />
        <RequirementsSection visit={visit} form={form} />
        <KeepingSection visit={visit} form={form} />
        <p className="quiet">
          All of it is recorded as one act, or nothing is. What is typed is kept on this device until then.{' '}
          <Button kind="quiet" onClick={() => form.change(BLANK_RETURN)}>
            Begin anew
          </Button>
        </p>
      </ActFrame>
    </div>
  );
}

/** The return from a shop, with everything that was done there. */
export function ReturnPage() {
  const { visitId } = useParams({ from: '/signed-in/shop-visits/$visitId/return' });
  const query = useQuery(shopVisitQuery(visitId));
  return (
    <>
      <PageHeading
        title="Return from shop of"
        serial={query.data?.component.serialNumber ?? ''}
        actions={<ActionLink href={`/shop-visits/${visitId}`}>The visit</ActionLink>}
      />
      <Answered query={query} doing="Reading the shop visit" lines={8}>
        {(visit) =>
          visit.status === 'in-shop' ? (
            <ReturnForm visit={visit} />
          ) : (
            <p>Its return is recorded already, or the visit is voided.</p>
          )
        }
      </Answered>
    </>
  );
}
