import { StatusShape } from './status-shape.js';
import { STATUS_LOOKS, type Status } from './statuses.js';
import './status.css';

interface StatusMarkProps {
  readonly status: Status;
  /** In place of the usual word, when more can be said: '3.4 N·m above the range'. */
  readonly word?: string | undefined;
}

/** A status by shape, word and colour. */
export function StatusMark({ status, word }: StatusMarkProps) {
  const look = STATUS_LOOKS[status];
  return (
    <span className={`status-mark tone-${look.tone}`}>
      <StatusShape status={status} />
      <span>{word ?? look.word}</span>
    </span>
  );
}
