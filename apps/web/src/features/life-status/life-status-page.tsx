import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { countersText } from '../../format/counters-text.js';
import { calendarDate } from '../../format/utc-date.js';
import { momentText } from '../../format/when.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { AsOfBar } from '../../ui/asof/as-of-bar.js';
import { Answered } from '../../ui/messages/answered.js';
import { FactList } from '../../ui/page/fact-list.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { type LifeSheet, lifeSheetQuery } from './life-status-data.js';
import { SheetFiles } from './sheet-files.js';
import { SheetTable } from './sheet-table.js';
import './life-status.css';

/** The day in the server's words. */
const DAY = /\d{4}-\d{2}-\d{2}/;

function Heading({ sheet: { subject, operator, at, ruleSet, ...sheet } }: { readonly sheet: LifeSheet }) {
  return (
    <FactList
      className="facts sheet-facts"
      facts={[
        ['Operator', operator],
        ['As at', momentText(at)],
        ['Model', subject.model ?? 'Not recorded'],
        ['Rating', subject.ratingCode ?? 'Not recorded'],
        [
          'Part number',
          <span key="pn" className="serial">
            {subject.partNumber}
          </span>,
        ],
        ['Where', subject.place],
        ['Since new', countersText(subject.sinceNew)],
        ['Rule set', ruleSet ?? 'On no airframe'],
        ['Limits in cycles', sheet.limiterByCycles ?? 'Nothing'],
        ['Limits by date', sheet.limiterByDate?.replace(DAY, calendarDate) ?? 'Nothing'],
      ]}
    />
  );
}

/** On paper alone: where the sheet is signed by hand. */
function PlaceToSign({ names }: { readonly names: readonly string[] }) {
  return (
    <div className="print-only sheet-sign">
      <p>Signed by hand: the system signs nothing here.</p>
      <dl>
        {names.map((name) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd />
          </div>
        ))}
      </dl>
    </div>
  );
}

/** The status sheet of an engine's limited parts, or of a module's, now or as at an instant. */
export function LifeStatusPage() {
  const { componentId } = useParams({ from: '/signed-in/components/$componentId/life-status' });
  const { at } = useSearch({ from: '/signed-in/components/$componentId/life-status' });
  const navigate = useNavigate();
  const query = useQuery(lifeSheetQuery(componentId, at));
  const subject = query.data?.subject;
  const label = subject === undefined ? 'the component' : `${subject.description} ${subject.serialNumber}`;
  return (
    <div className="stack life-status-page" key={componentId}>
      <PageHeading
        title="Status of limited parts"
        serial={subject?.serialNumber}
        below={
          subject && (
            <p>
              {subject.description}
              <span className="no-print">
                {', '}
                <RouteLink href={`/components/${componentId}`}>
                  back to the {subject.kind === 'engine' ? 'engine' : 'component'}
                </RouteLink>
              </span>
            </p>
          )
        }
      />
      <AsOfBar
        key={at ?? 'now'}
        at={at}
        onAt={(next) =>
          void navigate({
            to: '/components/$componentId/life-status',
            params: { componentId },
            search: next === undefined ? {} : { at: next },
          })
        }
      />
      <SheetFiles key={`${componentId} ${at ?? 'now'}`} componentId={componentId} at={at} label={label} />
      <Answered query={query} doing="Reading the status of limited parts" lines={10}>
        {(sheet) => (
          <>
            <Heading sheet={sheet} />
            <SheetTable parts={sheet.parts} label={`Limited parts of ${label}`} />
            <section className="stack" aria-label="Cautions">
              <ul className="sheet-cautions">
                {sheet.cautions.map((caution) => (
                  <li key={caution}>{caution}</li>
                ))}
              </ul>
            </section>
            <PlaceToSign names={sheet.toSign} />
          </>
        )}
      </Answered>
    </div>
  );
}
