import { type KeyboardEvent, type RefObject, useEffect, useRef, useState } from 'react';

export interface ComboOption {
  readonly id: string;
  /** What is typed and matched: usually a serial. */
  readonly label: string;
  /** A second line: what and where it is. */
  readonly detail?: string | undefined;
}

export interface ComboChoice {
  readonly options: readonly ComboOption[];
  /** The id of the option chosen, or null. Typing something else makes it null again. */
  readonly value: string | null;
  readonly onChoose: (id: string | null) => void;
  /** Called when an option is taken from the list, or Enter is pressed on one typed in full: not while typing. */
  readonly onPick?: ((id: string) => void) | undefined;
  /** Given when the server searches: called with what is typed; options are then shown as they come. */
  readonly onTyped?: ((typed: string) => void) | undefined;
}

export interface ComboState {
  readonly field: RefObject<HTMLInputElement | null>;
  readonly typed: string;
  readonly open: boolean;
  readonly shown: readonly ComboOption[];
  /** The place of the option in hand, or -1. */
  readonly active: number;
  readonly type: (next: string) => void;
  readonly pick: (option: ComboOption) => void;
  readonly press: (event: KeyboardEvent<HTMLInputElement>) => void;
  readonly toggle: () => void;
  readonly close: () => void;
}

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** The one option typed in full. Null when there is none, or when two bear the same serial: then one is picked. */
export function typedInFull(options: readonly ComboOption[], typed: string): ComboOption | null {
  const alike = options.filter((option) => same(option.label, typed));
  return alike.length === 1 ? (alike[0] ?? null) : null;
}

/** The options whose label or second line holds what is typed. */
export function matching(options: readonly ComboOption[], typed: string): readonly ComboOption[] {
  const wanted = typed.trim().toLowerCase();
  const holds = (text: string) => text.toLowerCase().includes(wanted);
  return options.filter((option) => holds(option.label) || holds(option.detail ?? ''));
}

/** What a combo box knows and does. Source of the keys: WAI-ARIA authoring practices, combobox. */
export function useCombo({ options, value, onChoose, onPick, onTyped }: ComboChoice): ComboState {
  const field = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState(() => options.find((option) => option.id === value)?.label ?? '');
  const [open, setOpen] = useState(false);
  const [active, setActive] = useState(-1);
  const untouched = options.some((option) => option.id === value && option.label === typed);
  const shown = onTyped !== undefined || untouched ? options : matching(options, typed);
  const close = () => setOpen(false);

  // A serial pasted or read by a scanner is in full before the server's answer has come.
  const late = onTyped !== undefined && value === null ? typedInFull(options, typed) : null;
  const lateId = late?.id ?? null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: only what was found matters, not who is told
  useEffect(() => {
    if (lateId !== null) onChoose(lateId);
  }, [lateId]);

  const pick = (option: ComboOption) => {
    setTyped(option.label);
    close();
    onChoose(option.id);
    field.current?.focus();
    onPick?.(option.id);
  };
  const type = (next: string) => {
    setTyped(next);
    setOpen(true);
    setActive(-1);
    onTyped?.(next);
    onChoose(typedInFull(options, next)?.id ?? null);
  };
  const move = (step: number) => {
    const from = step > 0 ? 0 : shown.length - 1;
    setActive(Math.max(0, Math.min(shown.length - 1, open ? active + step : from)));
    setOpen(true);
  };
  const inFull = onPick === undefined ? null : typedInFull(shown, typed);
  const inHand = (open ? shown[active] : undefined) ?? inFull;
  const press = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'ArrowDown') move(1);
    else if (event.key === 'ArrowUp') move(-1);
    else if (event.key === 'Escape' && open) close();
    else if (event.key === 'Enter' && inHand !== null) pick(inHand);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const toggle = () => {
    field.current?.focus();
    if (open) close();
    else move(1);
  };
  return { field, typed, open, shown, active, type, pick, press, toggle, close };
}
