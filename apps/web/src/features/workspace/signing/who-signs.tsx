import { useSession } from '../../../server/session.js';
import { ChoiceField } from '../../../ui/fields/choice-field.js';
import { TextAreaField } from '../../../ui/fields/text-area-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import type { Who } from './sign-draft.js';
import type { Signing } from './use-signing.js';

interface WhoSignsProps {
  readonly signing: Signing;
  /** Whether the person signed in may choose; else it is settled already. */
  readonly choices: boolean;
}

function Name({ signing: { draft, change, ids, errorOf, words } }: { readonly signing: Signing }) {
  const session = useSession();
  return (
    <TextField
      id={ids.signInName}
      label="Their sign-in name"
      hint={`They sign on this tablet. ${session?.person.fullName ?? 'You'} stays signed in.`}
      autoCapitalize="none"
      spellCheck={false}
      value={draft.signInName}
      error={errorOf(ids.signInName)}
      onBlur={words.read}
      onChange={({ target }) => change({ signInName: target.value })}
    />
  );
}

function Alone({ signing: { draft, change, ids, errorOf, words } }: { readonly signing: Signing }) {
  return (
    <TextAreaField
      id={ids.reinspectionReason}
      label="Why there is no other inspector"
      hint="The rule set allows this only where nobody else can be had. It is part of the words you sign."
      value={draft.reason}
      error={errorOf(ids.reinspectionReason)}
      onBlur={words.read}
      onChange={({ target }) => change({ reason: target.value })}
    />
  );
}

/** Who signs: the person signed in, or another one, whose words they then are. */
export function WhoSigns({ signing, choices }: WhoSignsProps) {
  const { draft, change } = signing;
  const session = useSession();
  const options: readonly { readonly value: Who; readonly label: string }[] = [
    { value: 'me', label: session?.person.fullName ?? 'You' },
    { value: 'another', label: 'Another person' },
  ];
  return (
    <>
      {choices && (
        <ChoiceField
          legend="Who signs"
          options={options}
          value={draft.who}
          onChoose={(who) => change({ who, secret: '' })}
        />
      )}
      {draft.who === 'another' && <Name signing={signing} />}
      {draft.who === 'alone' && <Alone signing={signing} />}
    </>
  );
}
