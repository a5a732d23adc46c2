const HAS_DIGIT = /\d/;

/** Words in which no serial, registration or part number is broken at its hyphen. */
export function WholeSerials({ children }: { readonly children: string }) {
  return children.split(/(\s+)/).map((word, place) =>
    word.includes('-') && HAS_DIGIT.test(word) ? (
      // The words are told apart by their place alone.
      // biome-ignore lint/suspicious/noArrayIndexKey: place is their identity
      <span key={place} className="unbroken">
        {word}
      </span>
    ) : (
      word
    ),
  );
}
