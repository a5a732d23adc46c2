import type { ReactNode, Ref } from 'react';
import { counted } from '../../format/counts.js';
import { RouteLink } from '../actions/route-link.js';
import { Counter } from '../status/counter.js';
import { SerialText } from '../status/serial-text.js';
import { StatusMark } from '../status/status-mark.js';
import type { PlacedPosition } from './position.js';
import './position-card.css';

/** What a card shows, in counts and words. */
export interface CardPosition extends PlacedPosition {
  /** Opens the engine, or the act that fills the empty position; null when there is nothing to open. */
  readonly href: string | null;
  /** Null when no trusted record says. Left out for an empty position. */
  readonly minutes?: number | null;
  readonly cycles?: number | string | null;
  /** The tightest limit: { amount: '2,019 cycles left', part: 'HPT disk 1' }. */
  readonly tightest?: { readonly amount: string; readonly part: string } | null;
  /** 'Last record 3 Oct, gap of 38 days'. */
  readonly note?: string | null;
  readonly openFindings?: number;
  /** '3 Nov 2026', for an empty position. */
  readonly emptySince?: string | null;
  /** Further lines at the foot of the card. */
  readonly details?: ReactNode;
}

interface PositionCardProps {
  readonly position: CardPosition;
  readonly linkRef?: Ref<HTMLAnchorElement> | undefined;
}

function Installed({ position }: { readonly position: CardPosition }) {
  const { status, minutes, cycles, tightest, note, openFindings } = position;
  return (
    <>
      <StatusMark status={status} />
      <Counter minutes={minutes} cycles={cycles} />
      {tightest != null && (
        <p>
          <strong>{tightest.amount}</strong>, {tightest.part}
        </p>
      )}
      {note != null && <p>{note}</p>}
      {openFindings !== undefined && (
        <p className="quiet">
          {openFindings === 0 ? 'No open findings' : counted(openFindings, 'open finding')}
        </p>
      )}
    </>
  );
}

function Heading({ position, linkRef }: PositionCardProps) {
  const { kind, number, label, serial, href } = position;
  const inside = (
    <>
      <span className="visually-hidden">{label}, </span>
      <span className={kind === 'apu' ? 'card-number card-number-apu' : 'card-number'} aria-hidden="true">
        {kind === 'apu' ? 'APU' : number}
      </span>
      {serial === null ? <span className="visually-hidden">empty</span> : <SerialText>{serial}</SerialText>}
    </>
  );
  return (
    <h3 className="card-heading">
      {href === null ? (
        <span className="card-unlinked">{inside}</span>
      ) : (
        <RouteLink href={href} ref={linkRef} className="card-link">
          {inside}
        </RouteLink>
      )}
    </h3>
  );
}

function Empty({ position }: { readonly position: CardPosition }) {
  const what = position.kind === 'apu' ? 'APU' : 'engine';
  const since = position.emptySince == null ? '' : ` since ${position.emptySince}`;
  return (
    <p>
      No {what} installed{since}
    </p>
  );
}

/** One position as a card. Its heading is the link. */
export function PositionCard({ position, linkRef }: PositionCardProps) {
  const { serial, status, details } = position;
  return (
    <li className={`card ${serial === null ? 'card-empty' : `card-${status}`}`}>
      <Heading position={position} linkRef={linkRef} />
      {serial === null ? <Empty position={position} /> : <Installed position={position} />}
      {details !== undefined && <div className="card-details">{details}</div>}
    </li>
  );
}
