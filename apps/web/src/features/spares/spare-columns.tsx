import { leftIn } from '../../format/due-words.js';
import { remainingCycles, remainingMinutes } from '../../format/remaining.js';
import { calendarDate } from '../../format/utc-date.js';
import { dayText } from '../../format/when.js';
import type { Spare } from '../../server/shops/shop-records.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';

const KINDS: Readonly<Record<Spare['kind'], string>> = {
  engine: 'Engine',
  module: 'Module',
  part: 'Part',
  pod: 'Pod',
  apu: 'APU',
};

function What({ row }: { readonly row: Spare }) {
  const { componentId, kind, serialNumber, partNumber, description, engineModel, ratingCode } = row;
  return (
    <>
      {KINDS[kind]}{' '}
      <RouteLink href={`/components/${componentId}`}>
        <SerialText>{serialNumber}</SerialText>
      </RouteLink>
      <span className="spare-line small">
        {description}, <SerialText>{partNumber}</SerialText>
      </span>
      {engineModel !== null && (
        <span className="spare-line quiet small">
          {engineModel}
          {ratingCode !== null && `, rating ${ratingCode}`}
        </span>
      )}
    </>
  );
}

function Fit({ row }: { readonly row: Spare }) {
  return (
    <>
      {row.fit ? (
        <StatusMark status="in-limits" word="Fit to install" />
      ) : (
        <StatusMark status="blocked" word="Not fit" />
      )}
      {row.reasons.length > 0 && (
        <ul className="plain-list spare-reasons small">
          {row.reasons.map(({ code, text }) => (
            <li key={`${code} ${text}`}>{text}</li>
          ))}
        </ul>
      )}
      {row.fit && row.tag === null && <span className="spare-line quiet small">No tag recorded</span>}
      {row.tag?.status === 'serviceable' && (
        <span className="spare-line quiet small">Tag {row.tag.tagNumber}</span>
      )}
    </>
  );
}

function Left({ row: { left, nextRequirement, reasons } }: { readonly row: Spare }) {
  const { cycles, cyclesPart, minutes, minutesPart, goodThrough, ratingOpen } = left;
  const none = cycles === null && minutes === null && goodThrough === null && !ratingOpen;
  return (
    <>
      {none && (
        <span className="quiet">
          {reasons.some(({ code }) => code === 'not-verified') ? 'Not verified' : 'Nothing limited in it'}
        </span>
      )}
      {ratingOpen && <span className="spare-line quiet">Told at the rating of its engine</span>}
      {cycles !== null && (
        <span className="spare-line">
          <strong>{remainingCycles(cycles)}</strong> <span className="quiet small">{cyclesPart}</span>
        </span>
      )}
      {minutes !== null && (
        <span className="spare-line">
          <strong>{remainingMinutes(minutes)}</strong> <span className="quiet small">{minutesPart}</span>
        </span>
      )}
      {goodThrough !== null && <span className="spare-line">Good through {calendarDate(goodThrough)}</span>}
      {nextRequirement !== null && (
        <span className="spare-line small">
          Next{' '}
          <RouteLink href={`/requirements/${nextRequirement.requirementId}`}>
            <SerialText>{nextRequirement.code}</SerialText>
          </RouteLink>
          : {nextText(nextRequirement)}
        </span>
      )}
    </>
  );
}

function nextText({ dimension, remaining, dueOn, verified }: NonNullable<Spare['nextRequirement']>): string {
  if (!verified) return 'not verified';
  if (dueOn !== null) return `by ${calendarDate(dueOn)}`;
  if (remaining === null) return 'not told';
  return leftIn(dimension === 'minutes' ? 'minutes' : 'cycles', remaining);
}

function Where({ row }: { readonly row: Spare }) {
  const { location, since, openVisitId } = row;
  return (
    <>
      {location ?? 'No place recorded'}
      {since !== null && <span className="spare-line quiet small">Since {dayText(since)}</span>}
      {openVisitId !== null && (
        <RouteLink href={`/shop-visits/${openVisitId}`}>
          <span className="small">Its shop visit</span>
        </RouteLink>
      )}
    </>
  );
}

/** What lies there: what it is, whether it may go on, what is left, where it is and whose. */
export const SPARE_COLUMNS: readonly Column<Spare>[] = [
  {
    id: 'serial',
    header: 'Spare',
    namesRow: true,
    sortBy: ({ serialNumber }) => serialNumber,
    cell: (row) => <What row={row} />,
  },
  { id: 'fit', header: 'Fit to install', cell: (row) => <Fit row={row} /> },
  {
    id: 'cycles',
    header: 'Left in it',
    sortBy: ({ left }) => left.cycles,
    cell: (row) => <Left row={row} />,
  },
  { id: 'since', header: 'Where', sortBy: ({ since }) => since, cell: (row) => <Where row={row} /> },
  {
    id: 'preservation',
    header: 'Preserved until',
    sortBy: ({ preservation }) => preservation?.goodUntil ?? null,
    cell: ({ preservation }) => {
      if (preservation === null) return <span className="quiet">Not recorded</span>;
      const day = calendarDate(preservation.goodUntil);
      return preservation.over ? <StatusMark status="soon" word={`Over since ${day}`} /> : day;
    },
  },
  {
    id: 'owner',
    header: 'Owner',
    cell: ({ owner, lessor }) => (
      <>
        {owner}
        {lessor !== null && <span className="spare-line quiet small">Leased from {lessor}</span>}
      </>
    ),
  },
];
