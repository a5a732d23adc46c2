import { remainingCycles, remainingDays, remainingMinutes } from '../../format/remaining.js';
import { SerialText } from '../status/serial-text.js';
import { StatusMark } from '../status/status-mark.js';
import { type Broken, isNothing, type Reached, type Unknown } from './broken.js';
import { LimitedName, OverrunList } from './overrun-list.js';
import './consequences.css';

function left({ dimension, remaining }: Reached): string {
  if (dimension === 'days') return remainingDays(remaining);
  return dimension === 'cycles' ? remainingCycles(remaining) : remainingMinutes(remaining);
}

function InEngine({ serial }: { readonly serial: string | null }) {
  if (serial === null) return null;
  return (
    <>
      {' '}
      in <SerialText>{serial}</SerialText>
    </>
  );
}

function ReachedList({ limits }: { readonly limits: readonly Reached[] }) {
  if (limits.length === 0) return null;
  return (
    <>
      <h3>Limits newly reached or passed</h3>
      <ul className="plain-list consequence-list">
        {limits.map((limit) => (
          <li key={`${limit.requirement} ${limit.serialNumber} ${limit.dimension}`}>
            <StatusMark status="over-limit" word={limit.remaining < 0 ? 'Over limit' : 'Limit reached'} />
            <p>
              {limit.requirement !== null && `${limit.requirement}, `}
              <LimitedName {...limit} />
              {limit.engineSerial !== limit.serialNumber && <InEngine serial={limit.engineSerial} />}:{' '}
              {left(limit)}
            </p>
          </li>
        ))}
      </ul>
    </>
  );
}

function UnknownList({ unknown }: { readonly unknown: readonly Unknown[] }) {
  if (unknown.length === 0) return null;
  return (
    <>
      <h3>Newly not verified or not authorised</h3>
      <ul className="plain-list consequence-list">
        {unknown.map((each) => (
          <li key={`${each.requirement} ${each.serialNumber} ${each.kind} ${each.reason}`}>
            <StatusMark
              status={each.kind === 'not-authorised' ? 'over-limit' : 'not-verified'}
              word={each.kind === 'not-authorised' ? 'Not authorised' : 'Not verified'}
            />
            <p>
              {each.requirement !== null && `${each.requirement}, `}
              <LimitedName {...each} />
              {each.engineSerial !== each.serialNumber && <InEngine serial={each.engineSerial} />}
              {each.reason !== null && `: ${each.reason}`}
            </p>
          </li>
        ))}
      </ul>
    </>
  );
}

/** What an act newly breaks: now, and in the past. Says so when it is nothing. */
export function Consequences({ broken }: { readonly broken: Broken }) {
  if (isNothing(broken))
    return (
      <p>
        No limit was newly reached or passed. What was over its limit before stays so: the due list has it.
      </p>
    );
  return (
    <>
      <ReachedList limits={broken.newlyOver} />
      <UnknownList unknown={broken.newlyUnknown} />
      {broken.overruns.length > 0 && (
        <>
          <h3>Flown over a limit</h3>
          <OverrunList overruns={broken.overruns} />
        </>
      )}
    </>
  );
}
