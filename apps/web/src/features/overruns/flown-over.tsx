import { useQuery } from '@tanstack/react-query';
import { OverrunList } from '../../ui/consequences/overrun-list.js';
import { Answered } from '../../ui/messages/answered.js';
import { type OverrunsOf, overrunsQuery } from './overruns-data.js';

/** When something was flown over a limit; computed from the records, so it goes only where they do. */
export function FlownOver({ of }: { readonly of: OverrunsOf }) {
  const query = useQuery(overrunsQuery(of));
  return (
    <section className="stack" aria-labelledby="flown-over">
      <h2 id="flown-over" className="section-heading">
        Flown over a limit
      </h2>
      <Answered query={query} doing="Reading what was flown over a limit" lines={2}>
        {(overruns) =>
          overruns.length === 0 ? (
            <p>Nothing on record was flown over a limit that stood then.</p>
          ) : (
            <OverrunList overruns={overruns} />
          )
        }
      </Answered>
    </section>
  );
}
