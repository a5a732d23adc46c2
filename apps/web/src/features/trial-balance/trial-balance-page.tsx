import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { counted } from '../../format/counts.js';
import { momentText } from '../../format/when.js';
import { holderWords, useMay } from '../../server/authority.js';
import { airframesQuery } from '../../server/fleet.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { AsOfBar } from '../../ui/asof/as-of-bar.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { Answered } from '../../ui/messages/answered.js';
import { AuthorityNote } from '../../ui/messages/authority-note.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import { AirframeBalanceView } from './airframe-balance.js';
import { isNothing } from './balance-words.js';
import { FleetTable } from './fleet-table.js';
import { OwnRunsTable } from './own-runs.js';
import { airframeBalanceQuery, fleetBalanceQuery } from './trial-balance-queries.js';
import './trial-balance.css';

interface VerdictProps {
  readonly wrong: number;
  readonly of: string;
  readonly when: string;
}

/** Whether all adds up, in one line. */
function Verdict({ wrong, of, when }: VerdictProps) {
  return (
    <p className="balance-verdict" role="status">
      {wrong === 0 ? (
        <StatusMark status="closed" word="Every difference is zero" />
      ) : (
        <StatusMark
          status="over-limit"
          word={`${counted(wrong, of)} ${wrong === 1 ? 'does' : 'do'} not add up`}
        />
      )}
      <span className="quiet"> {when}</span>
    </p>
  );
}

function OfFleet() {
  const query = useQuery(fleetBalanceQuery);
  return (
    <Answered query={query} doing="Drawing up the trial balance" lines={8}>
      {(balance) =>
        balance.rows.length === 0 ? (
          <EmptyState action={<ActionLink href="/register">Go to Register</ActionLink>}>
            No airframe with an engine position is on record yet.
          </EmptyState>
        ) : (
          <>
            <Verdict
              wrong={
                [...balance.rows, ...balance.cells, ...balance.counters].filter(
                  ({ difference }) => !isNothing(difference),
                ).length
              }
              of="account"
              when={`Drawn up ${momentText(balance.asOf)}`}
            />
            <FleetTable rows={balance.rows} />
            <OwnRunsTable balance={balance} />
          </>
        )
      }
    </Answered>
  );
}

function OfAirframe({ id, upTo }: { readonly id: string; readonly upTo: string | undefined }) {
  const query = useQuery(airframeBalanceQuery(id, upTo));
  const navigate = useNavigate({ from: '/trial-balance' });
  return (
    <>
      <AsOfBar
        key={upTo ?? 'now'}
        label="Up to"
        at={upTo}
        onAt={(next) =>
          void navigate({ search: { airframe: id, ...(next === undefined ? {} : { upTo: next }) } })
        }
      />
      <Answered query={query} doing="Drawing up the trial balance" lines={8}>
        {(balance) => (
          <>
            <Verdict
              wrong={
                balance.positions
                  .flatMap(({ spans }) => spans)
                  .filter(({ difference }) => !isNothing(difference)).length
              }
              of="span"
              when={`Up to ${momentText(balance.upTo)}`}
            />
            <AirframeBalanceView balance={balance} />
          </>
        )}
      </Answered>
    </>
  );
}

function AirframeFilter({ airframe }: { readonly airframe: string | undefined }) {
  const airframes = useQuery(airframesQuery).data ?? [];
  const navigate = useNavigate({ from: '/trial-balance' });
  if (airframes.length === 0) return null;
  return (
    <div className="row no-print">
      <SelectField
        label="Airframe"
        unchosen="All airframes"
        value={airframe ?? ''}
        options={airframes.map(({ id, registration }) => ({ value: id, label: registration }))}
        onChange={({ target }) =>
          void navigate({ search: target.value === '' ? {} : { airframe: target.value } })
        }
      />
    </div>
  );
}

/** What airframes flew, against where it went: to engines, past empty positions, or while an engine did not run. */
export function TrialBalancePage() {
  const { airframe, upTo } = useSearch({ from: '/signed-in/trial-balance' });
  const registration = useQuery(airframesQuery).data?.find(({ id }) => id === airframe)?.registration;
  const may = useMay('check-records');
  return (
    <div className="stack">
      <PageHeading
        title="Trial balance"
        serial={registration}
        below={
          <p>
            What was flown and run, against where it went: to engines, past a position while it was empty, or
            while the engine did not run. The accounts are added up from different records; every difference
            is zero unless something was lost or made up.
          </p>
        }
        actions={
          may && (
            <>
              {airframe !== undefined && <ActionLink href={`/positions/${airframe}`}>Positions</ActionLink>}
              <Button onClick={() => window.print()}>Print</Button>
            </>
          )
        }
      />
      {may ? (
        <>
          <AirframeFilter airframe={airframe} />
          {airframe === undefined ? <OfFleet /> : <OfAirframe key={airframe} id={airframe} upTo={upTo} />}
        </>
      ) : (
        <AuthorityNote act="The trial balance is read" by={holderWords('check-records')} />
      )}
    </div>
  );
}
