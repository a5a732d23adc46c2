import type { TorqueCapture } from '@strutbook/domain/work/capture.js';
import { reasonText } from '@strutbook/domain/work/entry-words.js';
import { ChoiceField } from '../../../ui/fields/choice-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { ErrorSummary } from '../../../ui/messages/error-summary.js';
import { ReadingField } from '../../../ui/reading/reading-field.js';
import type { Step } from '../work/work-shapes.js';
import { ExtensionFields } from './extension-fields.js';
import { PointChoice } from './point-choice.js';
import { ToolChoice } from './tool-choice.js';
import { TorqueActs } from './torque-acts.js';
import { asksRunOn } from './torque-draft.js';
import { TorqueFigures } from './torque-figures.js';
import { TorqueKeypad } from './torque-keypad.js';
import { type TorqueDesk, useTorque } from './use-torque.js';
import './torque.css';

const METHODS = [
  { value: 'set-value', label: 'The value it was set to' },
  { value: 'reading', label: 'The value it showed' },
] as const;

/** What is held against the reading beyond the verdict at the field, once the field is left. */
function Reasons({ desk: { judgement, judged, left } }: { readonly desk: TorqueDesk }) {
  const further = judgement?.reasons.filter((reason) => reasonText(reason) !== judged.words) ?? [];
  if (!left || further.length === 0) return null;
  return (
    <ul className="plain-list reasons">
      {further.map((reason) => (
        <li key={reason.code}>{reasonText(reason)}</li>
      ))}
    </ul>
  );
}

function RunOn({ desk, capture }: { readonly desk: TorqueDesk; readonly capture: TorqueCapture }) {
  const { low, high } = capture.runOn;
  const bounds = low !== null && high !== null ? ` It must lie in ${low} to ${high} ${capture.unit}.` : '';
  return (
    <TextField
      id={desk.ids.runOn}
      label={`Run-on torque, ${desk.unit}`}
      hint={`While the nut runs down, before it seats.${bounds}`}
      className="field-short run-on"
      inputMode={desk.keypad ? 'none' : 'decimal'}
      mono
      spellCheck={false}
      disabled={desk.blocked !== null}
      value={desk.draft.runOn}
      onFocus={() => desk.setActive('runOn')}
      onChange={({ target }) => desk.change({ runOn: target.value })}
    />
  );
}

/** One bolt after another: the wrench, what it showed, the verdict on leaving the field, and what to do then. */
export function TorqueForm({ step, capture }: { readonly step: Step; readonly capture: TorqueCapture }) {
  const desk = useTorque(step, capture);
  const { draft, change, ids } = desk;
  return (
    <div className="stack capture-form torque">
      <ErrorSummary messages={desk.messages} attempt={desk.attempt} />
      <PointChoice {...{ step, capture }} point={desk.point} onChoose={desk.choosePoint} />
      <ToolChoice
        id={ids.tool}
        tools={desk.tools}
        tool={desk.tool}
        error={desk.messages.find(({ fieldId }) => fieldId === ids.tool)?.message ?? null}
        onChoose={desk.chooseTool}
      />
      <ChoiceField
        legend="What you type"
        options={METHODS}
        value={draft.method}
        onChoose={(method) => change({ method })}
      />
      <TorqueFigures
        capture={capture}
        judgement={draft.indication.trim() === '' && draft.runOn.trim() === '' ? null : desk.judgement}
      />
      <div className="torque-entry">
        <div className="stack torque-fields">
          {asksRunOn(capture) && <RunOn {...{ desk, capture }} />}
          <ReadingField
            id={ids.indication}
            label={capture.points.length < 2 ? 'Wrench' : `Wrench, bolt ${desk.point}`}
            unit={desk.unit}
            judged={desk.judged}
            value={draft.indication}
            ownKeypad={desk.keypad}
            blockedBecause={desk.blocked === null ? null : 'First choose a wrench that is in date'}
            onFocus={() => desk.setActive('indication')}
            onTyped={(indication) => change({ indication })}
            finished={desk.left}
            onVerdict={() => desk.setLeft(true)}
          />
          <Reasons desk={desk} />
        </div>
        <TorqueKeypad desk={desk} />
        <div className="stack torque-acts">
          <ExtensionFields extension={draft.extension} onChange={(extension) => change({ extension })} />
          <TorqueActs desk={desk} />
        </div>
      </div>
    </div>
  );
}
