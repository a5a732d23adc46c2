import { dataOrThrow } from '@strutbook/api-client/index.js';
import { queryOptions, useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { hoursMinutes, thousands } from '../../../format/hours.js';
import { calendarDate } from '../../../format/utc-date.js';
import { momentText } from '../../../format/when.js';
import { api } from '../../../server/api.js';
import { type Airframe, airframeQuery, ruleSetsQuery } from '../../../server/fleet.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { announce } from '../../../ui/messages/announcements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { FactList } from '../../../ui/page/fact-list.js';
import { Voided } from '../../../ui/status/voided.js';
import { balanceText } from '../components/component-facts.js';
import { OpeningForm } from '../openings/opening-form.js';
import { RegisterFrame } from '../register-frame.js';
import { PositionSlots } from './position-slots.js';

interface OfProps {
  readonly airframe: Airframe;
}

const openingsQuery = (id: string) =>
  queryOptions({
    queryKey: ['openings', id],
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/airframes/{id}/openings', { params: { path: { id } }, signal })),
  });

function Identity({ airframe }: OfProps) {
  const ruleSets = useQuery(ruleSetsQuery).data ?? [];
  const facts = [
    ['Serial number', airframe.serialNumber],
    ['Type', airframe.type],
    ['Rule set', ruleSets.find(({ code }) => code === airframe.ruleSet)?.name ?? airframe.ruleSet],
    ['Days counted in', airframe.dayZone],
    ['Owner', airframe.owner],
    ...(airframe.lessor === null ? [] : [['Lessor', airframe.lessor] as const]),
    ['Hours', airframe.minutes === null ? 'Not verified' : hoursMinutes(airframe.minutes)],
    ['Flights', airframe.flights === null ? 'Not verified' : thousands(airframe.flights)],
    [
      'Manufactured on',
      airframe.manufacturedOn === null ? 'Not recorded' : calendarDate(airframe.manufacturedOn),
    ],
  ] as const;
  return <FactList facts={facts} />;
}

function Openings({ airframe }: OfProps) {
  const openings = useQuery(openingsQuery(airframe.id));
  return (
    <Answered query={openings} doing="Reading the opening balance">
      {(all) =>
        all.length === 0 ? (
          <EmptyState>
            No opening balance is recorded. An airframe that flew before its record began needs one, or its
            totals are wrong.
          </EmptyState>
        ) : (
          <ul>
            {all.map(({ id, at, rows, source, voided, voidReason }) => (
              <li key={id}>
                {voided ? <del>{balanceText(rows, 'flights')}</del> : balanceText(rows, 'flights')} at{' '}
                {momentText(at)}. <span className="quiet">{source}</span>
                {voided && <Voided reason={voidReason} />}
              </li>
            ))}
          </ul>
        )
      }
    </Answered>
  );
}

/** An airframe in the register: identity, opening balance, and what is mounted at its positions. */
export function AirframePage() {
  const { airframeId } = useParams({ from: '/signed-in/register/airframes/$airframeId' });
  const airframe = useQuery(airframeQuery(airframeId));
  return (
    <RegisterFrame
      title="Airframe"
      serial={airframe.data?.registration}
      add={{
        word: 'Record an opening balance',
        form: (close) => (
          <OpeningForm
            subject={{ kind: 'airframe', id: airframeId }}
            onAdded={() => {
              announce('The opening balance was recorded.');
              close();
            }}
          />
        ),
      }}
    >
      <Answered query={airframe} doing="Reading the airframe" lines={8}>
        {(data) => (
          <div className="stack">
            <Identity airframe={data} />
            <h2 className="section-heading">Opening balance</h2>
            <Openings airframe={data} />
            <h2 className="section-heading">Positions</h2>
            <PositionSlots airframe={data} />
            <p className="row no-print">
              <RouteLink href={`/flights?airframe=${data.id}`}>Flights</RouteLink>
              <RouteLink href={`/history/airframes/${data.id}`}>History</RouteLink>
            </p>
          </div>
        )}
      </Answered>
    </RegisterFrame>
  );
}
