import { parseDate } from '../../../../format/utc-moment.js';
import { ruleSentences, shapeOf } from './rule-words.js';
import { isTyped } from './typed-interval.js';
import { type TypedRequirement, wordsOf } from './typed-requirement.js';

/** What the rule means as typed so far, in plain words. */
export function RulePreview({ typed }: { readonly typed: TypedRequirement }) {
  const { threshold, repeat } = typed;
  const shape = shapeOf(wordsOf(typed));
  // A date half typed is not read as one.
  const readable = {
    ...shape,
    effectiveOn: parseDate(typed.effectiveOn).ok ? shape.effectiveOn : '',
    fromOn: parseDate(typed.fromOn).ok ? shape.fromOn : null,
  };
  return (
    <section className="rule-preview" aria-labelledby="rule-preview">
      <h3 id="rule-preview">What this means</h3>
      {isTyped(threshold) || isTyped(repeat) ? (
        <ul>
          {ruleSentences(readable).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : (
        <p>Nothing says yet when it is due.</p>
      )}
    </section>
  );
}
