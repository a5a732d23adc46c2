import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { calendarDate } from '../../../format/utc-date.js';
import { holderWords, roleWords } from '../../../server/authority.js';
import { type Session, useSession } from '../../../server/session.js';
import { Answered } from '../../../ui/messages/answered.js';
import { PageHeading } from '../../../ui/page/page-heading.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { FACT_COLUMNS } from './authorisation-columns.js';
import { type Authorisation, authorisationsOfQuery } from './authorisation-data.js';
import { counts, lookOf, SCOPES, signsWith, typeText } from './authorisation-words.js';
import './authorisations.css';

interface ScopeLineProps {
  readonly scope: (typeof SCOPES)[number];
  readonly person: Session['person'];
  readonly held: readonly Authorisation[];
}

const throughText = ({ toOn }: Authorisation): string =>
  toOn === null ? 'no end set' : `through ${calendarDate(toOn)}`;

/** Why one kind of signature is not the person's; null when it is. */
function missingText({ scope, person, held }: ScopeLineProps): string | null {
  if (!signsWith(scope.value, person.roles))
    return `Your roles do not sign this: ${roleWords(scope.roles)} do.`;
  if (held.length === 0)
    return `No authorisation is in force today. They are kept by: ${holderWords('manage-people')}.`;
  if (scope.value === 'release' && (person.licence ?? null) === null)
    return 'No licence number of yours is on record; a release needs one.';
  return null;
}

function ScopeLine(props: ScopeLineProps) {
  const missing = missingText(props);
  return (
    <li className={missing === null ? '' : 'scope-none'}>
      <strong>{props.scope.label}</strong>
      {missing === null ? (
        <ul className="plain-list">
          {props.held.map((entry) => (
            <li key={entry.id}>
              <StatusMark status={lookOf(entry).status} word={`${typeText(entry)}, ${throughText(entry)}`} />
            </li>
          ))}
        </ul>
      ) : (
        <p>
          <StatusMark status="not-applicable" word="Not yours today" />
          <br />
          {missing}
        </p>
      )}
    </li>
  );
}

function PinLine({ hasPin }: Pick<Session, 'hasPin'>) {
  return (
    <p>
      {hasPin
        ? 'A PIN is chosen: it signs at any tablet, also at somebody else’s.'
        : 'No PIN is chosen yet; you sign by password.'}{' '}
      <Link to="/pin">{hasPin ? 'Choose another PIN' : 'Choose a PIN'}</Link>
    </p>
  );
}

/** What the person signed in may sign today, and why not the rest. */
export function MyAuthorityPage() {
  const session = useSession();
  const mine = useQuery(authorisationsOfQuery(session?.person.id ?? ''));
  if (session === null) return null;
  const { person } = session;
  return (
    <>
      <PageHeading
        title="What I may sign"
        below={
          <p>
            {person.fullName}: {roleWords(person.roles)}. Licence{' '}
            <span className="serial">{person.licence ?? 'none'}</span>
          </p>
        }
      />
      <Answered query={mine} doing="Reading what you may sign">
        {(all) => (
          <div className="stack">
            <ul className="plain-list scopes">
              {SCOPES.map((scope) => (
                <ScopeLine
                  key={scope.value}
                  {...{ scope, person }}
                  held={all.filter((entry) => entry.scope === scope.value && counts(entry))}
                />
              ))}
            </ul>
            <PinLine hasPin={session.hasPin} />
            {all.length > 0 && (
              <>
                <h2 className="section-heading">All that is on record</h2>
                <DataTable
                  caption="My authorisations"
                  captionHidden
                  columns={FACT_COLUMNS}
                  rows={all}
                  rowKey={({ id }) => id}
                  order={{ column: 'standing', descending: false }}
                  struck={({ voided }) => voided}
                />
              </>
            )}
          </div>
        )}
      </Answered>
    </>
  );
}
