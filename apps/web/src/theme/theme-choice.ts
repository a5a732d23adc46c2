export type ThemeChoice = 'light' | 'dark' | 'system';

const KEY = 'strutbook.theme';

/** The theme chosen on this device; 'system' when none was, or storage is off. */
export function chosenTheme(): ThemeChoice {
  try {
    const kept = localStorage.getItem(KEY);
    return kept === 'light' || kept === 'dark' ? kept : 'system';
  } catch {
    return 'system';
  }
}

/** Shows the theme at once and keeps it for the next visit. */
export function chooseTheme(choice: ThemeChoice): void {
  if (choice === 'system') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = choice;
  try {
    if (choice === 'system') localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, choice);
  } catch {
    // Storage may be off; the choice then lasts until the page is closed.
  }
}
