import { type KeyboardEvent, useState } from 'react';
import { RouteLink } from '../ui/actions/route-link.js';
import { TextField } from '../ui/fields/text-field.js';
import { SheetDialog } from '../ui/overlay/sheet-dialog.js';
import { PLACES } from './places.js';

interface Found {
  readonly name: string;
  readonly kind: string;
  readonly href: string;
}

const placesMatching = (typed: string): Found[] =>
  PLACES.filter((place) => place.name.toLowerCase().includes(typed.trim().toLowerCase())).map((place) => ({
    name: place.name,
    kind: 'Place',
    href: place.path,
  }));

const LINKS = '.finder-list a';

/** Down and up walk the list from the field and back. */
function walk(event: KeyboardEvent<HTMLElement>): void {
  const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
  if (step === 0) return;
  const stops = Array.from(event.currentTarget.querySelectorAll<HTMLElement>(`input, ${LINKS}`));
  const next = stops[stops.findIndex((stop) => stop.matches(':focus')) + step];
  if (next === undefined) return;
  event.preventDefault();
  next.focus();
}

/** Goes anywhere by typing. */
export function FinderDialog({ onClose }: { readonly onClose: () => void }) {
  const [typed, setTyped] = useState('');
  const found = placesMatching(typed);
  const openFirst = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key !== 'Enter') return;
    event.currentTarget.closest('.finder')?.querySelector<HTMLElement>(LINKS)?.click();
  };
  return (
    <SheetDialog title="Find" open onClose={onClose}>
      {/* The arrow keys of the field and the links are heard here. */}
      <search className="finder stack" onKeyDown={walk}>
        <TextField
          label="Name of a place"
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
          onKeyDown={openFirst}
          autoFocus
        />
        <p className="visually-hidden" role="status">
          {found.length} found
        </p>
        <ul className="finder-list">
          {found.map(({ name, kind, href }) => (
            <li key={href}>
              <RouteLink href={href} onClick={onClose}>
                {name} <span className="quiet small">{kind}</span>
              </RouteLink>
            </li>
          ))}
        </ul>
        {found.length === 0 && <p>Nothing matches “{typed}”.</p>}
      </search>
    </SheetDialog>
  );
}
