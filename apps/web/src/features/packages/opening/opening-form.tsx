import { type FormEvent, useEffect, useRef } from 'react';
import { useOfflineSince } from '../../../server/connection.js';
import { Button } from '../../../ui/actions/button.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { Notice } from '../../../ui/messages/notice.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { OrderFields } from '../order/order-fields.js';
import { LookOver, useSuggestedTitle } from './look-over.js';
import { type OpeningDraft, orderOn, type Section } from './opening-draft.js';
import { openingId } from './opening-ids.js';
import { RequirementsSection } from './requirements-section.js';
import { StepsSection } from './steps-section.js';
import { type Opening, useOpening } from './use-opening.js';
import { WorkSection } from './work-section.js';

const WORDS: Readonly<Record<Section, string>> = {
  work: 'Work',
  order: 'Order',
  steps: 'Steps',
  requirements: 'Requirements',
  'look-over': 'Look over',
};

const CAUTION =
  'Approved data, the authority and licensed staff govern; this record does not replace them. The order names the position and both serials: when one of them differs at the aircraft, stop, and ask.';

/** The sections by number; those reached can be opened again. */
function Sections({ opening: { sections, at, reached, goTo } }: { readonly opening: Opening }) {
  return (
    <nav aria-label="Parts of the form">
      <ol className="plain-list opening-sections">
        {sections.map((section, place) => (
          <li key={section}>
            {place > reached ? (
              <span className="opening-section quiet">
                {place + 1} {WORDS[section]}
              </span>
            ) : (
              <Button
                kind="quiet"
                className="opening-section"
                aria-current={section === at ? 'step' : undefined}
                onClick={() => goTo(section)}
              >
                {place + 1} {WORDS[section]}
              </Button>
            )}
          </li>
        ))}
      </ol>
    </nav>
  );
}

function Fields({ opening }: { readonly opening: Opening }) {
  const { draft, set, at, said } = opening;
  switch (at) {
    case 'work':
      return <WorkSection opening={opening} />;
    case 'order':
      return (
        <>
          <Notice kind="caution">
            <p>{CAUTION}</p>
          </Notice>
          <OrderFields
            draft={draft.order}
            set={(change) => set({ order: { ...draft.order, ...change } })}
            on={orderOn(draft)}
            said={said}
          />
        </>
      );
    case 'steps':
      return <StepsSection opening={opening} />;
    case 'requirements':
      return <RequirementsSection opening={opening} />;
    case 'look-over':
      return <LookOver opening={opening} />;
  }
}

function messagesOf({ faults, told }: Opening) {
  const own = Object.entries(faults).map(([path, message]) => ({ fieldId: openingId(path), message }));
  if (own.length > 0) return own;
  return told.map(({ path, message }) => ({ fieldId: path === null ? null : openingId(path), message }));
}

/** Opens a package: its sections one after the other, the last with all of it to look over. */
export function OpeningForm({ start }: { readonly start: OpeningDraft }) {
  const opening = useOpening(start);
  const { at, sections, goTo, act, attempt } = opening;
  const offline = useOfflineSince() !== null;
  const suggested = useSuggestedTitle(opening);
  const messages = messagesOf(opening);
  const heading = useRef<HTMLHeadingElement>(null);
  const first = useRef(true);
  // A new section is read from its heading.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the section is the trigger
  useEffect(() => {
    // What is wrong takes the focus itself.
    if (!first.current && messages.length === 0) heading.current?.focus();
    first.current = false;
  }, [at]);
  const place = sections.indexOf(at);
  const before = sections[place - 1];
  const last = at === 'look-over';
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!last) opening.next();
    else if (!offline && !act.isPending) opening.open(opening.draft.title ?? suggested);
  };
  return (
    <form className="stack opening" noValidate onSubmit={submit}>
      <Sections opening={opening} />
      <ErrorSummary messages={messages} attempt={attempt + (act.isError ? 1 : 0)} />
      <h2 className="section-heading" ref={heading} tabIndex={-1}>
        {place + 1} {WORDS[at]}
      </h2>
      <Fields opening={opening} />
      <div className="row">
        <Button
          type="submit"
          kind="primary"
          busy={act.isPending}
          offBecause={last && offline ? OFF_WHILE_OFFLINE : null}
        >
          {act.isPending ? 'Opening' : last ? 'Open the package' : 'Continue'}
        </Button>
        {before !== undefined && <Button onClick={() => goTo(before)}>Back</Button>}
      </div>
    </form>
  );
}
