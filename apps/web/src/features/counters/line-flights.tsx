import { useInfiniteQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { hoursMinutes } from '../../format/hours.js';
import { momentText } from '../../format/when.js';
import { Button } from '../../ui/actions/button.js';
import { Loading } from '../../ui/messages/loading.js';
import { ProblemPanel } from '../../ui/messages/problem-panel.js';
import { eventsText } from './counter-words.js';
import { type LineSpan, lineFlightsQuery } from './counters-data.js';

function Rows({ span }: { readonly span: LineSpan }) {
  const query = useInfiniteQuery(lineFlightsQuery(span));
  if (query.data === undefined)
    return query.error === null ? (
      <Loading label="Reading the flights" lines={2} />
    ) : (
      <ProblemPanel error={query.error} doing="Reading the flights" onRetry={() => void query.refetch()} />
    );
  const rows = query.data.pages.flatMap((page) => page.rows);
  if (rows.length === 0) return <p>No flight is logged in it.</p>;
  return (
    <>
      <ol className="line-flights">
        {rows.map(({ id, logPage, fromStation, toStation, landingAt, counts }) => (
          <li key={id}>
            <span className="serial">{logPage}</span> {fromStation} to {toStation}, landed{' '}
            {momentText(landingAt)}: {hoursMinutes(counts.minutes)} h, {eventsText(counts)}
          </li>
        ))}
      </ol>
      {query.hasNextPage && (
        <Button busy={query.isFetchingNextPage} onClick={() => void query.fetchNextPage()}>
          More flights
        </Button>
      )}
    </>
  );
}

/** The flights of one line, read when they are asked for. */
export function LineFlights({ span }: { readonly span: LineSpan }) {
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Flights of this line</summary>
      {open && <Rows span={span} />}
    </details>
  );
}
