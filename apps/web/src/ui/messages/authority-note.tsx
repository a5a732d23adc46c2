interface AuthorityNoteProps {
  /** What is not offered here: 'Flights are entered'. */
  readonly act: string;
  /** Who holds the authority: 'Records or Administrator'. */
  readonly by: string;
}

/** In place of an act that this person may not do: who may. */
export function AuthorityNote({ act, by }: AuthorityNoteProps) {
  return (
    <p className="quiet small">
      {act} by: {by}.
    </p>
  );
}
