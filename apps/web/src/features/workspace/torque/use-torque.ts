import type { TorqueUnit } from '@strutbook/domain/torque/torque.js';
import type { TorqueCapture } from '@strutbook/domain/work/capture.js';
import type { Judgement } from '@strutbook/domain/work/entry.js';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useId, useState } from 'react';
import { utcToday } from '../../../format/now.js';
import { type Tool, toolsQuery } from '../../../server/tools.js';
import { useTouch } from '../../../ui/keypad/use-touch.js';
import type { FieldMessage } from '../../../ui/messages/error-summary.js';
import { summaryOf } from '../../../ui/messages/field-messages.js';
import type { Judged } from '../../../ui/reading/reading-field.js';
import { useDesk, useEntryOff, useStepAct } from '../work/use-desk.js';
import { recordEntry } from '../work/work-queries.js';
import type { Step } from '../work/work-shapes.js';
import { toolFacts, toolOff, unitOf } from './tools.js';
import {
  EMPTY_DRAFT,
  judgeDraft,
  judgedField,
  nextPoint,
  type TorqueDraft,
  typedTorque,
} from './torque-draft.js';

type Field = 'indication' | 'runOn';

/** What is to happen once the attempt is on record. */
type Afterwards = 'next' | 'again' | 'keep';

/** The wrench last used on this device, offered for the next bolt. Forgotten with the page. */
let lastTool: string | null = null;

export interface TorqueDesk {
  readonly point: string;
  readonly choosePoint: (point: string) => void;
  readonly tools: readonly Tool[];
  readonly tool: Tool | null;
  readonly chooseTool: (toolId: string) => void;
  readonly unit: TorqueUnit;
  readonly draft: TorqueDraft;
  readonly change: (next: Partial<TorqueDraft>) => void;
  readonly judgement: Judgement | null;
  readonly judged: Judged;
  /** The reading is finished: its verdict stands. */
  readonly left: boolean;
  readonly setLeft: (left: boolean) => void;
  readonly active: Field;
  readonly setActive: (field: Field) => void;
  readonly keypad: boolean;
  readonly showKeypad: (shown: boolean) => void;
  /** Why nothing can be typed: the tool is out of date. */
  readonly blocked: string | null;
  readonly off: string | null;
  readonly busy: boolean;
  readonly what: string;
  readonly record: (afterwards: Afterwards) => void;
  readonly messages: readonly FieldMessage[];
  readonly attempt: number;
  readonly ids: { readonly tool: string; readonly indication: string; readonly runOn: string };
}

/** What is to be mended before it is sent. */
function faultsOf(
  tool: Tool | null,
  { indication }: TorqueDraft,
  example: string,
  ids: TorqueDesk['ids'],
): FieldMessage[] {
  return [
    ...(tool === null ? [{ fieldId: ids.tool, message: 'Choose the torque wrench used' }] : []),
    ...(indication.trim() === ''
      ? [{ fieldId: ids.indication, message: `Enter the value, for example ${example}` }]
      : []),
  ];
}

/** The wrench chosen, and those to choose from. */
function useTool(): Pick<TorqueDesk, 'tools' | 'tool' | 'chooseTool'> {
  const tools = useQuery(toolsQuery).data ?? [];
  const [toolId, setToolId] = useState(lastTool);
  const chooseTool = (id: string) => {
    lastTool = id;
    setToolId(id);
  };
  return { tools, tool: tools.find(({ id }) => id === toolId) ?? null, chooseTool };
}

/** While a rejected reading stands typed, its step is not signed past it. */
function useHold(stepId: string, rejected: boolean): void {
  const { onHold } = useDesk();
  useEffect(() => {
    onHold(rejected ? stepId : null);
    return () => onHold(null);
  }, [onHold, stepId, rejected]);
}

/** What is typed for one bolt after the other, judged as it is typed. */
export function useTorque(step: Step, capture: TorqueCapture): TorqueDesk {
  const base = useId();
  const ids = { tool: `${base}-tool`, indication: `${base}-indication`, runOn: `${base}-run-on` };
  const touch = useTouch();
  const off = useEntryOff();
  const today = utcToday();
  const { tools, tool, chooseTool } = useTool();
  const [chosen, setChosen] = useState<string | null>(null);
  const [draft, setDraft] = useState(EMPTY_DRAFT);
  const [left, setLeft] = useState(false);
  const [active, setActive] = useState<Field>('indication');
  const [keypad, showKeypad] = useState<boolean | null>(null);
  const [faults, setFaults] = useState<readonly FieldMessage[]>([]);
  const [attempt, setAttempt] = useState(0);
  const [after, setAfter] = useState<Afterwards>('next');
  const point = chosen ?? nextPoint(step, capture);
  const unit = unitOf(tool, capture.unit);
  const typed = typedTorque(draft, point, unit);
  const judgement = judgeDraft(step, capture, typed, tool === null ? null : toolFacts(tool), today);
  const act = useStepAct(recordEntry, () => {
    setDraft({ ...draft, indication: '', runOn: after === 'again' ? draft.runOn : '' });
    setLeft(false);
    setChosen(after === 'again' ? point : null);
    if (after === 'again') document.getElementById(ids.indication)?.focus();
  });
  useHold(step.id, left && draft.indication.trim() !== '' && judgement.verdict === 'rejected');
  const record = (afterwards: Afterwards) => {
    const missing = faultsOf(tool, draft, `${capture.low} ${unit}`, ids);
    setAttempt(attempt + 1);
    setFaults(missing);
    setAfter(afterwards);
    if (missing.length > 0) act.reset();
    else if (tool !== null) act.mutate({ stepId: step.id, capture: capture.key, typed, toolId: tool.id });
  };
  return {
    point,
    choosePoint: setChosen,
    tools,
    tool,
    chooseTool,
    unit,
    draft,
    change: (next) => {
      setDraft((before) => ({ ...before, ...next }));
      setLeft(false);
    },
    judgement,
    judged: judgedField(judgement, capture),
    left: left && draft.indication.trim() !== '',
    setLeft,
    active,
    setActive,
    keypad: keypad ?? touch,
    showKeypad,
    blocked: tool === null ? null : toolOff(tool, today),
    off,
    busy: act.isPending,
    what: capture.points.length < 2 ? 'the torque' : `bolt ${point}`,
    record,
    messages: faults.length > 0 ? faults : summaryOf(act.error),
    attempt,
    ids,
  };
}
