import type { Airframe } from '../../server/fleet.js';
import { SelectField } from '../../ui/fields/select-field.js';

interface AirframeChoiceProps {
  readonly airframes: readonly Airframe[];
  readonly value: string;
  readonly onChoose: (id: string) => void;
}

/** Whose flights. */
export function AirframeChoice({ airframes, value, onChoose }: AirframeChoiceProps) {
  return (
    <SelectField
      label="Airframe"
      value={value}
      options={airframes.map(({ id, registration, type }) => ({
        value: id,
        label: `${registration}, ${type}`,
      }))}
      onChange={(event) => onChoose(event.target.value)}
    />
  );
}

/** The airframe asked for in the address, or else the first by registration; '' when there is none. */
export function chosenAirframe(
  airframes: readonly Airframe[],
  asked: string | undefined,
): Airframe | undefined {
  return (
    airframes.find(({ id }) => id === asked) ??
    [...airframes].sort((a, b) => a.registration.localeCompare(b.registration))[0]
  );
}
