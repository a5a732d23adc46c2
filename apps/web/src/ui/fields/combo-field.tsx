import { useId } from 'react';
import { type ComboChoice, type ComboState, useCombo } from './combo-state.js';
import { FieldFrame } from './field-frame.js';
import './combo-field.css';

export type { ComboOption } from './combo-state.js';

export interface ComboFieldProps extends ComboChoice {
  readonly id?: string | undefined;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly error?: string | null | undefined;
  readonly mono?: boolean | undefined;
  readonly searching?: boolean | undefined;
  /** What is said when nothing fits, where not all that is on record is offered: 'No spare'. */
  readonly nothing?: string | undefined;
}

interface ListProps {
  readonly id: string;
  readonly label: string;
  readonly state: ComboState;
  readonly mono: boolean;
  readonly searching: boolean;
  readonly nothing: string;
}

/** Pressing here does not take the focus from the field; a pick happens on release. */
function OptionList({ id, label, state, mono, searching, nothing }: ListProps) {
  if (state.shown.length === 0) {
    return (
      <p className="combo-list combo-empty" role="status">
        {searching ? 'Searching' : `${nothing} matches “${state.typed}”.`}
      </p>
    );
  }
  return (
    <div
      className="combo-list"
      role="listbox"
      id={id}
      aria-label={label}
      tabIndex={-1}
      onMouseDown={(event) => event.preventDefault()}
    >
      {state.shown.map((option, place) => (
        <div
          key={option.id}
          id={`${id}-${place}`}
          role="option"
          tabIndex={-1}
          aria-selected={place === state.active}
          className="combo-option"
          onClick={() => state.pick(option)}
          // The field hears the keys; this is for aids that put the focus here themselves.
          onKeyDown={(event) => event.key === 'Enter' && state.pick(option)}
        >
          <span className={mono ? 'field-mono' : ''}>{option.label}</span>
          {option.detail !== undefined && <span className="field-hint">{option.detail}</span>}
        </div>
      ))}
    </div>
  );
}

/** One of a long list, found by typing. Only what is on record can be chosen. */
export function ComboField(props: ComboFieldProps) {
  const { id, label, hint, error, mono = false, searching = false, nothing = 'Nothing on record' } = props;
  const listId = useId();
  const state = useCombo(props);
  const listed = state.open && state.shown.length > 0;
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error}>
      {(wiring) => (
        <div className="combo-box">
          <input
            {...wiring}
            ref={state.field}
            type="text"
            role="combobox"
            aria-autocomplete="list"
            aria-expanded={listed}
            aria-controls={listed ? listId : undefined}
            aria-activedescendant={listed && state.active >= 0 ? `${listId}-${state.active}` : undefined}
            autoComplete="off"
            spellCheck={false}
            className={mono ? 'field-input field-mono' : 'field-input'}
            value={state.typed}
            onChange={(event) => state.type(event.target.value)}
            onKeyDown={state.press}
            onBlur={state.close}
          />
          <button
            type="button"
            className="combo-open"
            tabIndex={-1}
            aria-label={`Show the list: ${label}`}
            onMouseDown={(event) => event.preventDefault()}
            onClick={state.toggle}
          >
            <svg width="12" height="8" viewBox="0 0 12 8" aria-hidden="true">
              <path d="M1 1l5 5 5-5" fill="none" stroke="currentColor" strokeWidth="2" />
            </svg>
          </button>
          {state.open && <OptionList id={listId} {...{ label, state, mono, searching, nothing }} />}
        </div>
      )}
    </FieldFrame>
  );
}
