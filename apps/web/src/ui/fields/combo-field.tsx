import { type KeyboardEvent, useId, useRef, useState } from 'react';
import { FieldFrame } from './field-frame.js';
import './combo-field.css';

export interface ComboOption {
  readonly id: string;
  /** What is typed and matched: usually a serial. */
  readonly label: string;
  /** A second line: what and where it is. */
  readonly detail?: string | undefined;
}

export interface ComboFieldProps {
  readonly id?: string | undefined;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly error?: string | null | undefined;
  readonly options: readonly ComboOption[];
  /** The id of the option chosen, or null. Typing something else makes it null again. */
  readonly value: string | null;
  readonly onChoose: (id: string | null) => void;
  /** Given when the server searches: called with what is typed; options are then shown as they come. */
  readonly onTyped?: ((typed: string) => void) | undefined;
  readonly mono?: boolean | undefined;
  readonly searching?: boolean | undefined;
}

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

function matching(options: readonly ComboOption[], typed: string): readonly ComboOption[] {
  const wanted = typed.trim().toLowerCase();
  return options.filter(
    (option) =>
      option.label.toLowerCase().includes(wanted) || (option.detail ?? '').toLowerCase().includes(wanted),
  );
}

interface ListProps {
  readonly id: string;
  readonly label: string;
  readonly options: readonly ComboOption[];
  readonly active: number;
  readonly mono: boolean;
  readonly emptyWords: string;
  readonly onPick: (option: ComboOption) => void;
}

/** A pick happens on release, and pressing does not take the focus from the field. */
function OptionList({ id, label, options, active, mono, emptyWords, onPick }: ListProps) {
  if (options.length === 0) {
    return (
      <p className="combo-list combo-empty" role="status">
        {emptyWords}
      </p>
    );
  }
  return (
    // The keys are heard by the field: focus never enters the list. Source: WAI-ARIA practices, combobox.
    <div
      className="combo-list"
      role="listbox"
      id={id}
      aria-label={label}
      tabIndex={-1}
      onPointerDown={(event) => event.preventDefault()}
      onMouseDown={(event) => event.preventDefault()}
    >
      {options.map((option, place) => (
        <div
          key={option.id}
          id={`${id}-${place}`}
          role="option"
          tabIndex={-1}
          aria-selected={place === active}
          className="combo-option"
          onClick={() => onPick(option)}
          onKeyDown={(event) => event.key === 'Enter' && onPick(option)}
        >
          <span className={mono ? 'field-mono' : ''}>{option.label}</span>
          {option.detail !== undefined && <span className="field-hint">{option.detail}</span>}
        </div>
      ))}
    </div>
  );
}

/** One of a long list, found by typing. Only what is on record can be chosen. */
export function ComboField({
  id: given,
  label,
  hint,
  error,
  options,
  value,
  onChoose,
  onTyped,
  mono = false,
  searching = false,
}: ComboFieldProps) {
  const listId = useId();
  const field = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState(() => options.find((option) => option.id === value)?.label ?? '');
  const [open, setOpen] = useState(false);
  const [active, setActive] = useState(-1);
  const untouched = options.some((option) => option.id === value && option.label === typed);
  const shown = onTyped !== undefined || untouched ? options : matching(options, typed);

  const pick = (option: ComboOption) => {
    setTyped(option.label);
    setOpen(false);
    onChoose(option.id);
    field.current?.focus();
  };
  const type = (next: string) => {
    setTyped(next);
    setOpen(true);
    setActive(-1);
    onTyped?.(next);
    onChoose(options.find((option) => same(option.label, next))?.id ?? null);
  };
  const move = (step: number) => {
    setOpen(true);
    const next = open ? active + step : step > 0 ? 0 : shown.length - 1;
    setActive(Math.max(0, Math.min(shown.length - 1, next)));
  };
  const press = (event: KeyboardEvent<HTMLInputElement>) => {
    const chosen = open ? shown[active] : undefined;
    if (event.key === 'ArrowDown') move(1);
    else if (event.key === 'ArrowUp') move(-1);
    else if (event.key === 'Escape' && open) setOpen(false);
    else if (event.key === 'Enter' && chosen !== undefined) pick(chosen);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const listed = open && shown.length > 0;
  return (
    <FieldFrame id={given} label={label} hint={hint} error={error}>
      {(wiring) => (
        <div className="combo-box">
          <input
            {...wiring}
            ref={field}
            type="text"
            role="combobox"
            aria-autocomplete="list"
            aria-expanded={listed}
            aria-controls={listed ? listId : undefined}
            aria-activedescendant={listed && active >= 0 ? `${listId}-${active}` : undefined}
            autoComplete="off"
            spellCheck={false}
            className={mono ? 'field-input field-mono' : 'field-input'}
            value={typed}
            onChange={(event) => type(event.target.value)}
            onKeyDown={press}
            onBlur={() => setOpen(false)}
          />
          <button
            type="button"
            className="combo-open"
            tabIndex={-1}
            aria-label={`Show the list: ${label}`}
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => (open ? setOpen(false) : (field.current?.focus(), move(1)))}
          >
            <svg width="12" height="8" viewBox="0 0 12 8" aria-hidden="true">
              <path d="M1 1l5 5 5-5" fill="none" stroke="currentColor" strokeWidth="2" />
            </svg>
          </button>
          {open && (
            <OptionList
              id={listId}
              label={label}
              options={shown}
              active={active}
              mono={mono}
              emptyWords={searching ? 'Searching' : `Nothing on record matches “${typed}”.`}
              onPick={pick}
            />
          )}
        </div>
      )}
    </FieldFrame>
  );
}
