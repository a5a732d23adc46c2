import { useState } from 'react';
import { ActionLink } from '../ui/actions/action-link.js';
import { Button } from '../ui/actions/button.js';
import { CheckField } from '../ui/fields/check-field.js';
import { ComboField } from '../ui/fields/combo-field.js';
import { MomentField } from '../ui/fields/moment-field.js';
import { SelectField } from '../ui/fields/select-field.js';
import { TextAreaField } from '../ui/fields/text-area-field.js';
import { TextField } from '../ui/fields/text-field.js';
import { ErrorSummary } from '../ui/messages/error-summary.js';
import { ReadingField } from '../ui/reading/reading-field.js';
import { GallerySection } from './gallery-section.js';

const SPARES = [
  { id: 'a', label: 'KT-655', detail: 'Engine, spare store' },
  { id: 'b', label: 'KT-442', detail: 'Engine, ZZ-417 position 1' },
  { id: 'c', label: 'D77120', detail: 'Turbine disk 1, in KT-442' },
];

const REASONS = [
  { value: 'planned', label: 'Planned' },
  { value: 'unplanned', label: 'Unplanned' },
  { value: 'swap', label: 'Swap between positions', disabled: true },
];

const range = { low: '105.0', high: '115.0' };

function Reading({
  start,
  label,
  blocked,
}: {
  readonly start: string;
  readonly label: string;
  readonly blocked?: string;
}) {
  const [typed, setTyped] = useState(start);
  return (
    <ReadingField
      label={label}
      unit="N·m"
      range={range}
      value={typed}
      onTyped={setTyped}
      blockedBecause={blocked}
    />
  );
}

function Moment({
  start,
  label,
  error,
}: {
  readonly start: string;
  readonly label: string;
  readonly error?: string;
}) {
  const [typed, setTyped] = useState(start);
  return <MomentField label={label} value={typed} onTyped={setTyped} error={error} />;
}

/** Buttons and links in every state. */
export function GalleryActions() {
  return (
    <GallerySection title="Actions">
      <div className="row">
        <Button kind="primary">Record the change</Button>
        <Button>Save as a finding</Button>
        <Button kind="quiet">Discard</Button>
        <Button kind="primary" busy>
          Saving
        </Button>
        <ActionLink href="/flights">Open flights</ActionLink>
        <Button large kind="primary">
          Sign
        </Button>
      </div>
      <Button kind="primary" offBecause="Off while 3 points are open: step 27, step 12, disk 2">
        Release to service
      </Button>
    </GallerySection>
  );
}

/** Fields in every state. */
export function GalleryFields() {
  const [chosen, setChosen] = useState<string | null>('a');
  return (
    <>
      <GallerySection title="Fields">
        <ErrorSummary
          messages={[
            { fieldId: 'gallery-page', message: 'Enter the page number, for example 0417' },
            { fieldId: null, message: 'This flight is already on record' },
          ]}
        />
        <div className="gallery-columns">
          <TextField
            label="Serial"
            mono
            defaultValue="MRK0000-8BIl1O0-7719"
            hint="As stamped on the data plate"
          />
          <TextField id="gallery-page" label="Page" error="Enter the page number, for example 0417" />
          <TextField label="Remark" optional />
          <TextField label="Registration" mono defaultValue="ZZ-417" disabled />
          <SelectField label="Reason" options={REASONS} unchosen="Choose a reason" />
          <SelectField
            label="Removal"
            options={REASONS}
            error="Choose why the engine is removed"
            unchosen="Choose a reason"
          />
          <ComboField
            label="Incoming engine"
            options={SPARES}
            value={chosen}
            onChoose={setChosen}
            mono
            hint="Serial of a serviceable spare"
          />
          <ComboField
            label="Outgoing engine"
            options={SPARES}
            value={null}
            onChoose={() => undefined}
            mono
            error="Choose the engine that comes off"
          />
          <TextAreaField
            label="What was found"
            defaultValue="Two nicks on the leading edge of blade 14, 0.8 mm deep."
          />
          <Moment start="2026-11-11 14:05" label="Removed at" />
          <Moment start="" label="Installed at" />
          <Moment
            start="2026-11-31 14:05"
            label="Take-off"
            error="There is no such date. Enter year-month-day, for example 2026-11-11 14:05"
          />
          <CheckField label="The serial on the data plate was read, not the one on the container" />
          <CheckField label="Tools counted" error="Count the tools, then tick this" />
        </div>
      </GallerySection>
      <GallerySection title="Readings">
        <div className="gallery-columns">
          <Reading start="" label="Reading before" />
          <Reading start="112.4" label="Reading inside" />
          <Reading start="118.4" label="Reading above" />
          <Reading start="97,25" label="Reading below" />
          <Reading start="1e2" label="Reading unreadable" />
          <Reading
            start=""
            label="Reading blocked"
            blocked="Wrench TW-014 is past its calibration date, 3 Nov 2026"
          />
        </div>
      </GallerySection>
    </>
  );
}
