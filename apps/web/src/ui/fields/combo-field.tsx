import { ComboBox, ComboBoxStateContext } from 'react-aria-components/ComboBox';
import { Button } from 'react-aria-components/Button';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { Popover } from 'react-aria-components/Popover';
import { Text } from 'react-aria-components/Text';
import { useContext } from 'react';
import { StatusShape } from '../status/status-shape.js';
import './field.css';
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
  /** The id of the option chosen, or null. */
  readonly value: string | null;
  readonly onChoose: (id: string | null) => void;
  /** Given when the server searches: called with what is typed. */
  readonly onTyped?: ((typed: string) => void) | undefined;
  readonly mono?: boolean | undefined;
  readonly searching?: boolean | undefined;
}

function NoMatch({ searching }: { readonly searching: boolean }) {
  const typed = useContext(ComboBoxStateContext)?.inputValue ?? '';
  return <div className="combo-empty">{searching ? 'Searching' : `Nothing on record matches “${typed}”.`}</div>;
}

/** One of a long list, found by typing. Only what is on record can be chosen. */
export function ComboField({ id, label, hint, error, options, value, onChoose, onTyped, mono, searching = false }: ComboFieldProps) {
  const wrong = (error ?? '') !== '';
  const chosen = options.find((option) => option.id === value);
  return (
    <ComboBox
      className={wrong ? 'field field-invalid' : 'field'}
      value={value}
      defaultInputValue={chosen?.label ?? ''}
      onChange={(key) => onChoose(key === null ? null : String(key))}
      {...(onTyped === undefined ? { defaultItems: options } : { items: options, onInputChange: onTyped })}
      isInvalid={wrong}
      allowsEmptyCollection
      menuTrigger="input"
    >
      <Label className="field-label">{label}</Label>
      {hint !== undefined && (
        <Text slot="description" className="field-hint">
          {hint}
        </Text>
      )}
      {wrong && (
        <Text slot="errorMessage" className="field-error">
          <StatusShape status="over-limit" size={16} />
          <span>{error}</span>
        </Text>
      )}
      <div className="combo-box">
        <Input {...(id === undefined ? {} : { id })} className={mono === true ? 'field-input field-mono' : 'field-input'} />
        <Button className="combo-open" aria-label="Show the list">
          <svg width="12" height="8" viewBox="0 0 12 8" aria-hidden="true">
            <path d="M1 1l5 5 5-5" fill="none" stroke="currentColor" strokeWidth="2" />
          </svg>
        </Button>
      </div>
      <Popover className="combo-popover" offset={2}>
        <ListBox className="combo-list" renderEmptyState={() => <NoMatch searching={searching} />}>
          {(option: ComboOption) => (
            <ListBoxItem id={option.id} textValue={option.label} className="combo-option">
              <Text slot="label" className={mono === true ? 'field-mono' : ''}>
                {option.label}
              </Text>
              {option.detail !== undefined && (
                <Text slot="description" className="field-hint">
                  {option.detail}
                </Text>
              )}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
