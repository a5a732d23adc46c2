import { type KeyboardEvent, useRef } from 'react';
import { type CardPosition, PositionCard } from './position-card.js';
import { PositionDiagram } from './position-diagram.js';

interface PositionBoardProps {
  readonly registration: string;
  /** In order: engines by number, then the APU. */
  readonly positions: readonly CardPosition[];
  /** Single keys can be turned off in the settings. Source: WCAG 2.2, 2.1.4. */
  readonly numberKeys?: boolean;
}

const isTyping = (target: EventTarget): boolean =>
  target instanceof HTMLInputElement ||
  target instanceof HTMLTextAreaElement ||
  target instanceof HTMLSelectElement;

/** The aircraft and a card for each position. Inside it the keys 1 to 9 go to the engine of that number. */
export function PositionBoard({ registration, positions, numberKeys = true }: PositionBoardProps) {
  const links = useRef(new Map<number, HTMLAnchorElement>());
  const engines = positions.filter((position) => position.kind === 'engine');
  const goTo = (event: KeyboardEvent) => {
    if (!numberKeys || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
    const link = /^[1-9]$/.test(event.key) ? links.current.get(Number(event.key)) : undefined;
    if (link === undefined) return;
    event.preventDefault();
    link.focus();
  };
  const keep = (position: CardPosition) => (link: HTMLAnchorElement | null) => {
    if (position.kind !== 'engine') return;
    if (link === null) links.current.delete(position.number);
    else links.current.set(position.number, link);
  };
  return (
    <section className="position-board" aria-label={`Positions of ${registration}`} onKeyDown={goTo}>
      <div className="board-diagram">
        <PositionDiagram registration={registration} positions={positions} />
      </div>
      <ul className="cards">
        {positions.map((position) => (
          <PositionCard
            key={`${position.kind} ${position.number}`}
            position={position}
            linkRef={keep(position)}
          />
        ))}
      </ul>
      {numberKeys && engines.length > 1 && (
        <p className="board-keys no-print">
          On a card, the keys 1 {engines.length === 2 ? 'and' : 'to'} {engines.length} go to that position.
        </p>
      )}
    </section>
  );
}
