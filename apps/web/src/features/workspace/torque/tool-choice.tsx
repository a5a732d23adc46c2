import { utcToday } from '../../../format/now.js';
import type { Tool } from '../../../server/tools.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { toolOff, toolWords } from './tools.js';

interface ToolChoiceProps {
  readonly id: string;
  readonly tools: readonly Tool[];
  readonly tool: Tool | null;
  readonly error: string | null;
  readonly onChoose: (toolId: string) => void;
}

/** The wrench by its serial number, with its range and when its calibration is due. */
export function ToolChoice({ id, tools, tool, error, onChoose }: ToolChoiceProps) {
  const today = utcToday();
  const wrenches = tools.filter(({ kind }) => kind === 'torque-wrench');
  return (
    <div className="tool-choice">
      <SelectField
        id={id}
        label="Torque wrench"
        unchosen={wrenches.length === 0 ? 'No torque wrench is registered' : 'Choose by serial number'}
        error={error}
        value={tool?.id ?? ''}
        options={wrenches.map((each) => ({
          value: each.id,
          label: `${each.serialNumber}, ${each.description}${toolOff(each, today) === null ? '' : ' (not in date)'}`,
        }))}
        onChange={({ target }) => onChoose(target.value)}
      />
      {tool !== null && <p className="small">{toolWords(tool)}</p>}
      {tool !== null && toolOff(tool, today) !== null && (
        <p role="status">
          <StatusMark status="blocked" word={toolOff(tool, today) ?? ''} />
        </p>
      )}
    </div>
  );
}
