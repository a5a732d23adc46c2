import type { MouseEvent } from 'react';
import './keypad.css';

interface KeypadProps {
  /** What it types into: 'Reading of the wrench'. */
  readonly label: string;
  readonly value: string;
  readonly onTyped: (typed: string) => void;
  /** The field is finished: its verdict may come. */
  readonly onDone: () => void;
}

const KEYS = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0'] as const;

/** The field keeps the focus: pressing a key must not count as leaving it. */
const stay = (event: MouseEvent): void => event.preventDefault();

/** Digits for gloves, 20 mm each. It adds at the end and takes from the end; a keyboard does the rest. */
export function Keypad({ label, value, onTyped, onDone }: KeypadProps) {
  return (
    <fieldset className="keypad" onMouseDown={stay}>
      <legend className="visually-hidden">Keypad for: {label}</legend>
      {KEYS.map((key) => (
        <button key={key} type="button" className="key" onClick={() => onTyped(value + key)}>
          {key}
        </button>
      ))}
      <button
        type="button"
        className="key"
        aria-label="Take back the last digit"
        onClick={() => onTyped(value.slice(0, -1))}
      >
        <svg width="28" height="20" viewBox="0 0 28 20" aria-hidden="true">
          <path d="M9 2H26V18H9L2 10Z M14 7l6 6M20 7l-6 6" />
        </svg>
      </button>
      <button type="button" className="key key-done" onClick={onDone}>
        Done
      </button>
    </fieldset>
  );
}
