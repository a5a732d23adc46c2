import { Button } from '../../../ui/actions/button.js';
import { Keypad } from '../../../ui/keypad/keypad.js';
import type { TorqueDesk } from './use-torque.js';

/** Leaves the field, as Tab would, so that its verdict comes. */
const leave = (): void => {
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
};

/** The page's own keypad; at a desk it is put away until it is asked for. */
export function TorqueKeypad({ desk }: { readonly desk: TorqueDesk }) {
  const { active, draft, change, keypad, showKeypad, blocked } = desk;
  if (blocked !== null) return null;
  const label = active === 'runOn' ? 'Run-on torque' : 'Wrench';
  return (
    <div className="torque-keypad">
      {keypad && (
        <Keypad
          label={label}
          value={draft[active]}
          onTyped={(typed) => change({ [active]: typed })}
          onDone={() => {
            if (active === 'indication') desk.setLeft(draft.indication.trim() !== '');
            leave();
          }}
        />
      )}
      <Button kind="quiet" onClick={() => showKeypad(!keypad)}>
        {keypad ? 'Use the keyboard' : 'Show the keypad'}
      </Button>
    </div>
  );
}
