import { useQuery } from '@tanstack/react-query';
import { type KeyboardEvent, useState } from 'react';
import { slotWords } from '../format/place-words.js';
import { type ComponentRow, componentChoiceQuery } from '../server/components.js';
import { airframesQuery } from '../server/fleet.js';
import { RouteLink } from '../ui/actions/route-link.js';
import { TextField } from '../ui/fields/text-field.js';
import { SheetDialog } from '../ui/overlay/sheet-dialog.js';
import { PLACES } from './places.js';

interface Found {
  readonly name: string;
  readonly kind: string;
  readonly href: string;
}

const holds = (name: string, wanted: string): boolean => name.toLowerCase().includes(wanted);

const placesMatching = (wanted: string): Found[] =>
  PLACES.filter(({ name }) => holds(name, wanted)).map(({ name, path }) => ({
    name,
    kind: 'Place',
    href: path,
  }));

const whereText = ({ kind, label }: ComponentRow['place']): string =>
  kind === 'slot' ? slotWords(label) : label;

/** Places, airframes by registration, and components by serial or part number. */
function useFound(typed: string): readonly Found[] {
  const wanted = typed.trim().toLowerCase();
  const airframes = useQuery({ ...airframesQuery, enabled: wanted !== '' }).data ?? [];
  const components = useQuery({
    ...componentChoiceQuery({ search: typed }),
    enabled: wanted.length >= 2,
  });
  const rows = wanted.length >= 2 ? (components.data?.rows ?? []) : [];
  return [
    ...(wanted === ''
      ? []
      : airframes
          .filter(({ registration }) => holds(registration, wanted))
          .map(({ id, registration, type }) => ({
            name: registration,
            kind: `Airframe, ${type}`,
            href: `/positions/${id}`,
          }))),
    ...rows.map(({ id, serialNumber, description, place }) => ({
      name: serialNumber,
      kind: `${description}, ${whereText(place)}`,
      href: `/components/${id}`,
    })),
    ...placesMatching(wanted),
  ];
}

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

/** Goes anywhere by typing: a place, a registration, a serial, a part number. */
export function FinderDialog({ onClose }: { readonly onClose: () => void }) {
  const [typed, setTyped] = useState('');
  // Enter opens the first of what matches all that is typed, not of what matched a moment before.
  const found = useFound(typed);
  const openFirst = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key !== 'Enter') return;
    event.currentTarget.closest('.finder')?.querySelector<HTMLElement>(LINKS)?.click();
  };
  return (
    <SheetDialog title="Find" open onClose={onClose}>
      {/* The arrow keys of the field and the links are heard here. */}
      <search className="finder stack" onKeyDown={walk}>
        <TextField
          label="Serial, part number, registration or place"
          mono
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
                {kind === 'Place' ? name : <span className="serial">{name}</span>}{' '}
                <span className="quiet small">{kind}</span>
              </RouteLink>
            </li>
          ))}
        </ul>
        {found.length === 0 && <p>Nothing matches “{typed}”.</p>}
      </search>
    </SheetDialog>
  );
}
