import { counted } from '../../../format/counts.js';
import { momentText } from '../../../format/when.js';
import type { Objection, ReleaseCheck } from '../../../server/wire.js';
import type { WorkPackage } from '../../../server/work.js';
import { ObjectionList } from '../../../ui/messages/objection-list.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { PassedList } from './release-note.js';
import { SignPanel } from './sign-panel.js';

const ofSeverity = (objections: readonly Objection[], wanted: Objection['severity']): readonly Objection[] =>
  objections.filter(({ severity }) => severity === wanted);

const verdict = (blocking: number): string =>
  blocking === 0 ? 'Ready: nothing blocks the release' : `Not ready: ${counted(blocking, 'point')} open`;

interface HeldProps {
  readonly id: string;
  readonly title: string;
  readonly objections: readonly Objection[];
  readonly work: WorkPackage | undefined;
}

/** Points of one severity; nothing when there are none. */
function Held({ id, title, objections, work }: HeldProps) {
  if (objections.length === 0) return null;
  return (
    <section className="stack" aria-labelledby={id}>
      <h2 id={id} className="section-heading">
        {title}
      </h2>
      <ObjectionList
        objections={objections}
        airframeId={work?.airframe?.id ?? null}
        packageId={work?.id ?? null}
      />
    </section>
  );
}

interface CheckProps {
  readonly check: ReleaseCheck;
  readonly work: WorkPackage | undefined;
  readonly onAgain: () => void;
}

/** The answer of a check: what blocks, what is told beside it, what passed, the words to be signed. */
export function Check({ check, work, onAgain }: CheckProps) {
  const { objections, passed, statement, ruleSet, summary, asOf } = check;
  const blocking = ofSeverity(objections, 'blocking');
  const advisory = ofSeverity(objections, 'advisory');
  return (
    <>
      <p className="verdict" role="status">
        <StatusMark status={blocking.length === 0 ? 'open' : 'blocked'} word={verdict(blocking.length)} />
      </p>
      <p>
        {summary} <span className="quiet">Checked on the records as of {momentText(asOf)}.</span>
      </p>
      <Held id="blocks" title="Blocks the release" objections={blocking} work={work} />
      <Held id="notes" title="To know, not blocking" objections={advisory} work={work} />
      <section className="stack" aria-labelledby="passed">
        <h2 id="passed" className="section-heading">
          Looked at
        </h2>
        {passed.length === 0 ? <p>Nothing passed.</p> : <PassedList passed={passed} />}
      </section>
      <section className="stack" aria-labelledby="statement">
        <h2 id="statement" className="section-heading">
          Statement
        </h2>
        <blockquote className="statement">{statement}</blockquote>
        <p className="quiet">
          {ruleSet.name}. Source: {ruleSet.source}. Approved data, the authority and licensed staff govern;
          this record does not replace them.
        </p>
      </section>
      <SignPanel check={check} blocking={blocking} onAgain={onAgain} />
    </>
  );
}
