import { countersText } from '../../format/counters-text.js';
import { sinceText } from '../../format/when.js';
import type { ChangedComponent, ChangePreview } from '../../server/wire.js';
import { ObjectionList } from '../../ui/messages/objection-list.js';
import { SerialText } from '../../ui/status/serial-text.js';

interface SideProps {
  readonly title: string;
  readonly component: ChangedComponent | null;
  readonly nothing: string;
}

function Side({ title, component, nothing }: SideProps) {
  return (
    <div className="sheet sheet-heavy stack">
      <h3>
        {title}
        {component !== null && (
          <>
            {', serial '}
            <SerialText>{component.serialNumber}</SerialText>
          </>
        )}
      </h3>
      {component === null ? (
        <p>{nothing}</p>
      ) : (
        <dl className="change-counters">
          <div>
            <dt>Part</dt>
            <dd>
              {component.description}, <SerialText>{component.partNumber}</SerialText>
            </dd>
          </div>
          <div>
            <dt>Since new, at that instant</dt>
            <dd>{countersText(component.sinceNew)}</dd>
          </div>
          {component.sinceInstalled !== null && (
            <div>
              <dt>Since installation, at that instant</dt>
              <dd>{countersText(component.sinceInstalled)}</dd>
            </div>
          )}
        </dl>
      )}
    </div>
  );
}

interface ShownPreviewProps {
  readonly preview: ChangePreview;
  readonly airframeId: string;
}

/** What the change would record: counters of both at that instant, and what is held against it. */
export function ShownPreview({ preview, airframeId }: ShownPreviewProps) {
  const { at, precision, outgoing, incoming, ratingCode, objections } = preview;
  return (
    <>
      <p>
        At <strong>{sinceText(at, precision)}</strong>
        {ratingCode !== null && `, from then on at rating ${ratingCode}`}
      </p>
      <div className="change-sides">
        <Side title="Comes off" component={outgoing} nothing="Nothing: the place was empty." />
        <Side title="Goes on" component={incoming} nothing="Nothing: the place stays empty." />
      </div>
      <h3>Held against it</h3>
      {objections.length === 0 ? (
        <p>Nothing is held against this change.</p>
      ) : (
        <>
          <p>
            What happened is recorded all the same. What blocks here will block the release until it is
            answered.
          </p>
          <ObjectionList objections={objections} airframeId={airframeId} />
        </>
      )}
    </>
  );
}
