// Writes down the acts of a package in order: what was captured in each step, by whom, and who signed it when.
import { minuteOf, wire } from '../instants.mjs';

const STEP_TAKES = 11;
const LOOK_TAKES = 4;

/**
 * The acts of the steps of a procedure, up to and with `until` when it is told.
 * `answers`: by the key of a capture, what was typed (text where a text or a number is asked for), or an attempt or
 * several as {typed, tool, by, voided}. `begins`: by the key of a step, when it was begun; the others follow it.
 */
export function workedSteps({ content, until = null, answers, begins, by, inspectedBy }) {
  const acts = [];
  let now = null;
  for (const step of content.steps) {
    if (begins[step.key] !== undefined) now = minuteOf(begins[step.key]);
    const about = { step: step.key };
    for (const capture of step.captures) acts.push(...attempts(capture, answers, about, by));
    now += STEP_TAKES;
    acts.push({ act: 'sign', ...about, meaning: 'done', by, performedAt: wire(now) });
    if (step.inspection === 'independent') {
      now += LOOK_TAKES;
      acts.push({
        act: 'sign',
        ...about,
        meaning: 'inspection',
        by: inspectedBy,
        at: by,
        performedAt: wire(now),
      });
    }
    if (step.key === until) break;
  }
  return acts;
}

/** The entries of one capture: each attempt, and the striking out of one that was wrong. */
export function attempts(capture, answers, about, by) {
  const answer = answers[capture.key];
  if (answer === undefined) {
    if (capture.kind === 'check') return [entry(capture, { kind: 'check', seen: true }, about, { by })];
    if (capture.kind === 'photo') return [];
    throw new Error(`nothing is typed for ${capture.key}`);
  }
  return (Array.isArray(answer) ? answer : [answer]).flatMap((one) => {
    const told = typeof one === 'object' && one.typed !== undefined ? one : { typed: one };
    const made = entry(capture, typedFor(capture, told.typed), about, { by: told.by ?? by, tool: told.tool });
    return told.voided === undefined
      ? [made]
      : [made, { ...made, act: 'void', reason: told.voided, tool: undefined }];
  });
}

function entry({ key }, typed, about, { by, tool }) {
  return { act: 'capture', ...about, by, capture: key, typed, ...(tool === undefined ? {} : { tool }) };
}

function typedFor({ kind }, typed) {
  if (typeof typed !== 'string') return { kind, ...typed };
  return kind === 'count' ? { kind, number: typed } : { kind, text: typed };
}

/** Torques of a group as read with one tool: [point, indication, run-on torque where one is asked for]. */
export function torques(tool, unit, readings) {
  return readings.map(([point, indication, runOn = null]) => ({
    tool,
    typed: { point, indication, unit, method: 'set-value', runOn, extension: null },
  }));
}

/** What the system must say of a package, from the same acts: how many steps stand how, what is open, what was counted. */
export function standingOf({ content, own = [], acts }) {
  const steps = [...content.steps, ...own.map((step, index) => ({ ...step, key: `+${index + 1}` }))];
  const signed = (key, meaning) =>
    acts.some((act) => act.act === 'sign' && act.step === key && act.meaning === meaning);
  const isDone = ({ key, inspection }) =>
    signed(key, 'done') && (inspection === 'none' || signed(key, 'inspection'));
  const last = (step, capture) =>
    acts.findLast((act) => act.act === 'capture' && act.step === step && act.capture === capture);
  const standing = (step) => {
    if (isDone(step)) return 'signed';
    if (signed(step.key, 'done')) return 'to-inspect';
    if (acts.some((act) => act.step === step.key && act.rejected)) return 'rejected';
    return (step.waitsFor ?? []).every((key) => isDone(steps.find((one) => one.key === key)))
      ? 'open'
      : 'blocked';
  };
  const standings = {};
  for (const step of steps) standings[standing(step)] = (standings[standing(step)] ?? 0) + 1;
  const open = content.items.filter(({ key }) => {
    const opened = steps.some((step) => step.opens?.includes(key) && signed(step.key, 'done'));
    return opened && !steps.some((step) => step.closes?.includes(key) && signed(step.key, 'done'));
  });
  const counted = (what, direction) => {
    const asked = steps.flatMap((step) =>
      step.captures
        .filter((one) => one.kind === 'count' && one.what === what && one.direction === direction)
        .map((one) => last(step.key, one.key)),
    );
    if (asked.length === 0 || asked.includes(undefined)) return null;
    return asked.reduce((sum, { typed }) => sum + Number(typed.number), 0);
  };
  const kinds = new Set(
    steps.flatMap((step) => step.captures.filter((one) => one.kind === 'count').map((one) => one.what)),
  );
  return {
    total: steps.length,
    standings,
    openItems: open.length,
    counts: ['tags', 'blanks', 'tools']
      .filter((what) => kinds.has(what))
      .map((what) => ({ what, out: counted(what, 'out'), in: counted(what, 'in') })),
  };
}
