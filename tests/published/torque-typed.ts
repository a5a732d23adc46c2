import { judgeTorque, type ToolFacts, type TorqueTyped } from '@strutbook/domain/torque/judge-torque.js';
import type { TorqueUnit } from '@strutbook/domain/torque/torque.js';
import { type Fraction, fraction } from '@strutbook/domain/units/fraction.js';
import type { TorqueCapture } from '@strutbook/domain/work/capture.js';
import type { Judgement } from '@strutbook/domain/work/entry.js';

/** What is judged: the range and its unit, and what was typed; all else is in order unless given. */
export interface Pull {
  readonly range: readonly [string, string];
  readonly unit: TorqueUnit;
  readonly typed: string;
  readonly typedUnit?: TorqueUnit;
  readonly capture?: Partial<TorqueCapture>;
  readonly more?: Partial<TorqueTyped>;
  readonly tool?: Partial<ToolFacts>;
  readonly on?: string;
}

/** Judges one torque of one fastener by a tool in date, with a range that holds every torque of these tests. */
export function judgePull({ range: [low, high], unit, typed, typedUnit, ...given }: Pull): Judgement {
  const capture: TorqueCapture = {
    kind: 'torque',
    key: 'bolt',
    label: 'Bolt',
    points: ['1'],
    low,
    high,
    unit,
    thread: 'dry',
    runOn: { rule: 'none', low: null, high: null },
    binds: 'range',
    ...given.capture,
  };
  const tool: ToolFacts = {
    serial: 'TW-1',
    unit: 'lbf·in',
    low: '0',
    high: '100000',
    deviation: '4',
    calibrations: [{ calibratedOn: '2026-01-01', dueOn: '2026-06-30' }],
    ...given.tool,
  };
  const what: TorqueTyped = {
    kind: 'torque',
    point: '1',
    indication: typed,
    unit: typedUnit ?? unit,
    method: 'set-value',
    runOn: null,
    extension: null,
    ...given.more,
  };
  return judgeTorque(capture, what, tool, [], given.on ?? '2026-06-30');
}

/** The codes alone. */
export function reasonsOf(judgement: Judgement): string[] {
  return judgement.reasons.map((reason) => reason.code);
}

/** A decimal number as a fraction, for the figures a source prints. */
export function decimal(text: string): Fraction {
  const [whole = '', decimals = ''] = text.split('.');
  return fraction(BigInt(whole + decimals), 10n ** BigInt(decimals.length));
}
