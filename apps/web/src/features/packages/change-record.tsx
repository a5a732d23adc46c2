import { countersText } from '../../format/counters-text.js';
import { boundaryText } from '../../format/when.js';
import type { Counters, MovedComponent, PackageChange } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { SerialText } from '../../ui/status/serial-text.js';

function Line({ term, counters }: { readonly term: string; readonly counters: Counters | null }) {
  if (counters === null) return null;
  return (
    <div>
      <dt>{term}</dt>
      <dd>{countersText(counters)}</dd>
    </div>
  );
}

interface SideProps {
  readonly title: 'Off' | 'On';
  readonly component: MovedComponent | null;
  readonly nothing: string;
}

function Side({ title, component, nothing }: SideProps) {
  return (
    <div className="moved">
      <h3>
        {title}
        {component !== null && (
          <>
            {', '}
            <RouteLink href={`/components/${component.id}`}>
              <SerialText>{component.serialNumber}</SerialText>
            </RouteLink>
          </>
        )}
      </h3>
      {component === null ? (
        <p>{nothing}</p>
      ) : (
        <dl>
          <div>
            <dt>Part number</dt>
            <dd>
              <SerialText>{component.partNumber}</SerialText>
            </dd>
          </div>
          <Line term="Since new, at that instant" counters={component.sinceNew} />
          <Line term="Since installation, at that instant" counters={component.sinceInstalled} />
        </dl>
      )}
    </div>
  );
}

const SLOTS: Readonly<Record<string, string>> = { engine: 'Engine', pod: 'Pod', apu: 'APU' };

/** What was taken off and put on, when, and why, with the counters of both. */
export function ChangeRecord({ change }: { readonly change: PackageChange }) {
  const { position, slot, slotName, outgoing, incoming, at, precision, placed, reason } = change;
  const { main, exactly } = boundaryText(at, precision, placed);
  const where =
    position === null
      ? slotName
      : slot === 'apu'
        ? 'APU'
        : `${SLOTS[slot] ?? 'Component'} at position ${position.number}`;
  return (
    <section className="stack" aria-label={where}>
      <h2 className="section-heading">{where}</h2>
      <p>
        {main}
        {exactly !== null && <span className="quiet"> ({exactly})</span>}
      </p>
      <p>
        <span className="quiet">Why:</span> {reason}
      </p>
      <div className="moved-pair">
        <Side title="Off" component={outgoing} nothing="Nothing came off: the position was empty." />
        <Side title="On" component={incoming} nothing="Nothing went on: the position stays empty." />
      </div>
    </section>
  );
}
