import './status.css';

interface VoidedProps {
  readonly reason: string | null;
  /** Where the row says already that it is voided. */
  readonly reasonOnly?: boolean;
}

/** Why something is voided; the line through its row leaves these words out. */
export function Voided({ reason, reasonOnly = false }: VoidedProps) {
  return (
    <strong className="fact-voided">
      {!reasonOnly && 'Voided: '}“{reason ?? 'no reason recorded'}”
    </strong>
  );
}
