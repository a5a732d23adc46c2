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
  /** Where its steps stand. */
  readonly packageId?: string | null;
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
  PART_UNSERVICEABLE: ['over-limit', 'Unserviceable'],
  PRESERVATION_OVER: ['soon', 'Preservation over'],
  DISPOSITION_MISSING: ['not-verified', 'No disposition'],
  SHOP_PAPERS_MISSING: ['not-verified', 'Papers missing'],
  REQUIREMENT_OVER: ['over-limit', 'Over limit'],
  DUE_WITHIN_PLANNED_FLYING: ['plan', 'Within planned flying'],
  REQUIREMENT_NOT_VERIFIED: ['not-verified', 'Not verified'],
  REQUIREMENT_IN_TOLERANCE: ['in-tolerance', 'In tolerance'],
  STEP_UNSIGNED: ['open', 'Open'],
  CAPTURE_MISSING: ['open', 'Not captured'],
  INSPECTION_MISSING: ['to-inspect', 'To inspect'],
  INSPECTION_BY_SAME_PERSON: ['to-inspect', 'To inspect'],
  TORQUE_OUT_OF_RANGE: ['over-limit', 'Out of range'],
  LEAK_FOUND: ['over-limit', 'Leak found'],
  PAPERS_REJECTED: ['over-limit', 'Rejected'],
  ENTRY_REJECTED: ['over-limit', 'Rejected'],
  ITEM_OPEN: ['open', 'Still open'],
  COUNTS_DIFFER: ['over-limit', 'Counts differ'],
  LOG_GAP: ['blocked', 'Gap in the log'],
};

const PAGES: Readonly<Record<string, string>> = {
  component: '/components/',
  airframe: '/positions/',
  package: '/packages/',
  requirement: '/requirements/',
  tool: '/tools/',
};

type Places = Pick<ObjectionListProps, 'airframeId' | 'packageId'>;

function hrefOf(
  { kind, id }: ShownObjection['subject'],
  { airframeId, packageId = null }: Places,
): string | null {
  const page = PAGES[kind];
  if (page !== undefined) return `${page}${id}`;
  if (kind === 'person') return '/people';
  if (kind === 'step') return packageId === null ? null : `/packages/${packageId}?step=${id}`;
  if (airframeId === null) return null;
  if (kind === 'position' || kind === 'slot') return `/positions/${airframeId}`;
  return kind === 'flight' ? `/flights?airframe=${airframeId}&flight=${id}` : null;
}

/** What was counted is told by steps at the foot of the package. */
const placeIn = (code: string): string => (code === 'COUNTS_DIFFER' ? '#accounts' : '');

function Line({ objection, ...places }: Places & { readonly objection: ShownObjection }) {
  const { code, severity, subject, reason, fix } = objection;
  const [status, word] = MARKS[code] ?? (['blocked', 'Blocks'] as const);
  const page = hrefOf(subject, places);
  const href = page === null ? null : `${page}${placeIn(code)}`;
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
          <span className="quiet">What to do:</span> {fix}
        </p>
        {code === 'LOG_GAP' && href !== null && (
          <p>
            <RouteLink href={href}>Explain or close this gap</RouteLink>
          </p>
        )}
      </div>
    </li>
  );
}

/** What is held against something, the worst first: the record, the reason, and what answers it. */
export function ObjectionList({ objections, ...places }: ObjectionListProps) {
  return (
    <ul className="plain-list objections">
      {objections.map((objection) => (
        <Line
          key={`${objection.code} ${objection.subject.id} ${objection.reason}`}
          objection={objection}
          {...places}
        />
      ))}
    </ul>
  );
}
