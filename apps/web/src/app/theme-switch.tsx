import { useState } from 'react';
import { chooseTheme, chosenTheme, type ThemeChoice } from '../theme/theme-choice.js';

const CHOICES: readonly { readonly value: ThemeChoice; readonly word: string }[] = [
  { value: 'light', word: 'Light' },
  { value: 'dark', word: 'Dark' },
  { value: 'system', word: 'As the device' },
];

/** Light for the ramp, dark for a night hangar, or as the device has it. */
export function ThemeSwitch() {
  const [choice, setChoice] = useState(chosenTheme);
  const pick = (next: ThemeChoice) => {
    chooseTheme(next);
    setChoice(next);
  };
  return (
    <fieldset className="theme-switch">
      <legend>Theme</legend>
      {CHOICES.map(({ value, word }) => (
        <label key={value}>
          <input
            type="radio"
            name="theme"
            value={value}
            checked={choice === value}
            onChange={() => pick(value)}
          />
          {word}
        </label>
      ))}
    </fieldset>
  );
}
