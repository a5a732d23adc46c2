import { counted } from '../../../format/counts.js';
import { momentText } from '../../../format/when.js';
import type { Passed, ReleaseNote } from '../../../server/wire.js';
import { ObjectionList } from '../../../ui/messages/objection-list.js';
import { StatusMark } from '../../../ui/status/status-mark.js';

/** What was looked at and had nothing held against it; each line stands open. */
export function PassedList({ passed }: { readonly passed: readonly Passed[] }) {
  return (
    <ul className="plain-list passed">
      {passed.map(({ label, count, of }) => (
        <li key={label}>
          <StatusMark status={count === of ? 'signed' : 'open'} word={label} />
          <span className="quiet">
            {count} of {of}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** The statement as signed: who, when, the words, and what was frozen with it. */
export function ReleaseNotePart({ note }: { readonly note: ReleaseNote }) {
  const {
    number,
    person,
    licence,
    signedAt,
    statement,
    ruleSet,
    contentHash,
    snapshotHash,
    objections,
    passed,
  } = note;
  return (
    <section className="stack release-note" aria-labelledby="release">
      <h2 id="release" className="section-heading">
        Release <span className="serial">{number}</span>
      </h2>
      <p>
        Signed by <strong>{person}</strong>
        {licence !== null && `, ${licence}`}, on {momentText(signedAt)}
      </p>
      <blockquote className="statement">{statement}</blockquote>
      <p className="quiet">
        {ruleSet.name}. Source: {ruleSet.source}
      </p>
      <dl className="hashes">
        <div>
          <dt>SHA-256 of what was signed</dt>
          <dd className="hash">{contentHash}</dd>
        </div>
        <div>
          <dt>SHA-256 of what the check looked at</dt>
          <dd className="hash">{snapshotHash}</dd>
        </div>
      </dl>
      <h3>The check, as frozen by the signature</h3>
      {objections.length > 0 ? (
        <>
          <p>{counted(objections.length, 'note')} that did not block</p>
          <ObjectionList objections={objections} airframeId={null} />
        </>
      ) : (
        <p>Nothing was held against it.</p>
      )}
      <PassedList passed={passed} />
    </section>
  );
}
