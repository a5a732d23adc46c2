import type { AccountableItem } from '@strutbook/domain/work/step.js';
import { useEffect, useRef } from 'react';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { useDesk } from '../work/use-desk.js';
import type { CountLine, OpenItem, Step } from '../work/work-shapes.js';
import { type CountedSoFar, countedSoFar, soFarWords } from './counted-so-far.js';
import './accounts.css';

const KINDS: Readonly<Record<AccountableItem['kind'], string>> = {
  connection: 'Connections apart',
  cowl: 'Cowls open',
  panel: 'Panels open',
  safety: 'Made safe, not yet undone',
};

const COUNTED = { tags: 'Tags', blanks: 'Blanks', tools: 'Tools' } as const;

/** Steps by their numbers, each a link to it. */
function StepLinks({ steps }: { readonly steps: readonly Step[] }) {
  const { hrefOf } = useDesk();
  return steps.map(({ id, definition }, place) => (
    <span key={id}>
      {place > 0 && ', '}
      <RouteLink href={hrefOf(id)}>{definition.number}</RouteLink>
    </span>
  ));
}

/** By which step a thing is to be closed again; nothing where none says so. */
function ClosedBy({ itemKey, after }: { readonly itemKey: string; readonly after: number }) {
  const { work } = useDesk();
  const steps = work.steps.filter(
    ({ definition }) => definition.number > after && definition.closes.includes(itemKey),
  );
  if (steps.length === 0) return null;
  return (
    <>
      , to be closed by step <StepLinks steps={steps} />
    </>
  );
}

function Items({
  kind,
  open,
}: {
  readonly kind: AccountableItem['kind'];
  readonly open: readonly OpenItem[];
}) {
  const { hrefOf } = useDesk();
  return (
    <div>
      <h3>
        {KINDS[kind]} <span className="account-count">{open.length}</span>
      </h3>
      <ul className="plain-list">
        {open.map(({ item, openedBy }) => (
          <li key={item.key}>
            {item.name}
            {item.side !== null && `, ${item.side}`}
            <span className="quiet">
              {' '}
              by step <RouteLink href={hrefOf(openedBy.stepId)}>{openedBy.number}</RouteLink>
              <ClosedBy itemKey={item.key} after={openedBy.number} />
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** How a count stands by what was counted so far: what is still to be counted is not taken for back. */
function CountStanding({ out, back }: { readonly out: CountedSoFar; readonly back: CountedSoFar }) {
  const toCome = out.toCome + back.toCome;
  if (toCome === out.asked + back.asked) return <span className="quiet">Not counted</span>;
  const away = out.number - back.number;
  if (away < 0) return <StatusMark status="rejected" word={`${-away} too many`} />;
  if (away > 0) return <StatusMark status="open" word={`${away} still out`} />;
  return toCome === 0 ? (
    <StatusMark status="signed" word="All back" />
  ) : (
    <StatusMark status="open" word="Not all counted" />
  );
}

/** The last column says when nothing was counted. */
const inTable = (sum: CountedSoFar): string => (sum.toCome === sum.asked ? '\u2013' : soFarWords(sum));

const counting = (steps: readonly Step[], what: CountLine['what']): readonly Step[] =>
  steps.filter(({ definition }) =>
    definition.captures.some((capture) => capture.kind === 'count' && capture.what === what),
  );

function Counts({ counts }: { readonly counts: readonly CountLine[] }) {
  const { work } = useDesk();
  return (
    <table className="account-table">
      <caption>Counted</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Out</th>
          <th scope="col">In</th>
          <th scope="col">Steps</th>
          <th scope="col">Standing</th>
        </tr>
      </thead>
      <tbody>
        {counts.map(({ what }) => {
          const out = countedSoFar(work.steps, what, 'out');
          const back = countedSoFar(work.steps, what, 'in');
          return (
            <tr key={what}>
              <th scope="row">{COUNTED[what]}</th>
              <td>{inTable(out)}</td>
              <td>{inTable(back)}</td>
              <td>
                <StepLinks steps={counting(work.steps, what)} />
              </td>
              <td>
                <CountStanding out={out} back={back} />
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** What was opened, parted or put out and must be closed, joined and counted back before a release. */
export function Accounting() {
  const {
    work: { items, openItems, counts },
  } = useDesk();
  const section = useRef<HTMLElement>(null);
  // The release check leads here, where each count names its steps.
  useEffect(() => {
    if (window.location.hash === '#accounts') section.current?.scrollIntoView();
  }, []);
  if (items.length === 0 && counts.every((line) => line.out === null && line.in === null)) return null;
  const kinds = (Object.keys(KINDS) as AccountableItem['kind'][]).filter((kind) =>
    openItems.some(({ item }) => item.kind === kind),
  );
  return (
    <section className="accounts" aria-labelledby="accounts" ref={section}>
      <h2 id="accounts" className="section-heading">
        Accounted for
      </h2>
      <div className="account-parts">
        {counts.length > 0 && <Counts counts={counts} />}
        {kinds.length === 0 ? (
          <p>Nothing stands open: no connection apart, no cowl or panel open.</p>
        ) : (
          kinds.map((kind) => (
            <Items key={kind} kind={kind} open={openItems.filter(({ item }) => item.kind === kind)} />
          ))
        )}
      </div>
    </section>
  );
}
