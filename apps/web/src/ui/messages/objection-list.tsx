import { RouteLink } from '../actions/route-link.js';
import { StatusMark } from '../status/status-mark.js';
import type { Status } from '../status/statuses.js';
import './objection-list.css';

/** Something held against a release or a fact. */
export interface ShownObjection {
  readonly code: string;
  readonly severity: 'blocking' | 'advisory';
  readonly positionNumber: number | null;
  readonly subject: { readonly kind: string; readonly id: string; readonly label: string };
  readonly reason: string;
  readonly fix: string;
}

interface ObjectionListProps {
  readonly objections: readonly ShownObjection[];
  /** Where positions and flights stand. */
  readonly airframeId: string | null;
}

/** The mark and the word of a blocking objection; any other blocks without further ado. */
const MARKS: Readonly<Record<string, readonly [Status, string]>> = {
  OVER_LIMIT: ['over-limit', 'Over limit'],
  AT_LIMIT: ['over-limit', 'At the limit'],
  NOT_AUTHORISED: ['over-limit', 'Not authorised'],
  ENGINE_NOT_AUTHORISED: ['over-limit', 'Not authorised'],
  LIMITED_PART_UNTRACED: ['not-verified', 'Not verified'],
  NO_LIMIT_RECORDED: ['not-verified', 'Not verified'],
  COUNTERS_UNKNOWN: ['not-verified', 'Not verified'],
  RATING_UNKNOWN: ['not-verified', 'Not verified'],
  STEP_UNSIGNED: ['open', 'Open'],
};

const PAGES: Readonly<Record<string, string>> = { component: '/components/', airframe: '/positions/' };

function hrefOf({ kind, id }: ShownObjection['subject'], airframeId: string | null): string | null {
  const page = PAGES[kind];
  if (page !== undefined) return `${page}${id}`;
  if (airframeId === null) return null;
  if (kind === 'position' || kind === 'slot') return `/positions/${airframeId}`;
  return kind === 'flight' ? `/flights?airframe=${airframeId}` : null;
}

function Line({
  objection,
  airframeId,
}: {
  readonly objection: ShownObjection;
  readonly airframeId: string | null;
}) {
  const { code, severity, subject, reason, fix } = objection;
  const [status, word] = MARKS[code] ?? (['blocked', 'Blocks'] as const);
  const href = hrefOf(subject, airframeId);
  return (
    <li className={severity === 'blocking' ? 'objection objection-blocking' : 'objection'}>
      {severity === 'blocking' ? (
        <StatusMark status={status} word={word} />
      ) : (
        <StatusMark status="finding" word="Note" />
      )}
      <div className="objection-words">
        <p>
          <strong>
            {href === null ? subject.label : <RouteLink href={href}>{subject.label}</RouteLink>}
          </strong>
        </p>
        <p>{reason}</p>
        <p>
          <span className="quiet">What answers it:</span> {fix}
        </p>
      </div>
    </li>
  );
}

/** What is held against something, the worst first: the record, the reason, and what answers it. */
export function ObjectionList({ objections, airframeId }: ObjectionListProps) {
  return (
    <ul className="plain-list objections">
      {objections.map((objection) => (
        <Line
          key={`${objection.code} ${objection.subject.id} ${objection.reason}`}
          objection={objection}
          airframeId={airframeId}
        />
      ))}
    </ul>
  );
}
