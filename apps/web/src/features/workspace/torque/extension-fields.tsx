import type { ExtensionTyped } from '@strutbook/domain/work/entry.js';
import { TextField } from '../../../ui/fields/text-field.js';

interface ExtensionFieldsProps {
  readonly extension: ExtensionTyped;
  readonly onChange: (next: ExtensionTyped) => void;
}

const FIELDS = [
  { key: 'wrenchLength', label: 'Wrench length', hint: 'Middle of the grip to the drive' },
  { key: 'length', label: 'Extension length', hint: 'Drive to the fastener, same unit' },
  { key: 'angle', label: 'Angle, degrees', hint: '0 straight out, 90 across' },
] as const;

/** Folded away: an extension or adapter makes the torque at the fastener another than the wrench shows. */
export function ExtensionFields({ extension, onChange }: ExtensionFieldsProps) {
  return (
    <details className="extension">
      <summary>Extension or adapter on the wrench</summary>
      <div className="field-row">
        {FIELDS.map(({ key, label, hint }) => (
          <TextField
            key={key}
            label={label}
            hint={hint}
            className="field-short"
            inputMode="decimal"
            mono
            value={extension[key]}
            onChange={({ target }) => onChange({ ...extension, [key]: target.value })}
          />
        ))}
      </div>
    </details>
  );
}
