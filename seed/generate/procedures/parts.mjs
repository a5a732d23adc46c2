// The parts a procedure is written with. Steps are numbered in the order they are written.

/** A step; `after` names the steps it waits for besides the one before it in its group. */
export const step = (key, title, more = {}) => ({
  key,
  title,
  text: null,
  cautions: [],
  source: null,
  after: [],
  inspection: 'none',
  captures: [],
  opens: [],
  closes: [],
  moves: null,
  ...more,
});

export const held = { inspection: 'independent' };

export const torque = (
  key,
  label,
  { points, low, high, unit = 'N·m', runOn = 'none', thread = 'lubricated' },
) => ({
  kind: 'torque',
  key,
  label,
  points,
  low,
  high,
  unit,
  thread,
  runOn: { rule: runOn, low: null, high: null },
  binds: 'range',
});
export const count = (key, label, what, direction) => ({ kind: 'count', key, label, what, direction });
export const text = (key, label, required = true) => ({ kind: 'text', key, label, required });
export const seen = (key, label) => ({ kind: 'check', key, label });
export const photo = (key, label, required = false) => ({ kind: 'photo', key, label, required });

/** A thing opened and closed, or parted and joined, in the work. */
export const item = (key, kind, name, side = null) => ({ key, kind, name, side });

/**
 * The content of a procedure: groups in order, each with its steps. A step waits for the one before it in its group,
 * the first of a group for the last step of the groups named in `waitsFor`.
 */
export function content({ items, groups }) {
  const last = new Map();
  const steps = [];
  for (const { key: group, waitsFor = [], steps: own, source } of groups) {
    let before = waitsFor.map((name) => last.get(name));
    for (const { after, ...rest } of own) {
      steps.push({
        key: rest.key,
        number: steps.length + 1,
        group,
        ...rest,
        source: rest.source ?? source,
        waitsFor: [...new Set([...before, ...after])],
      });
      before = [rest.key];
    }
    last.set(group, before[0]);
  }
  return {
    groups: groups.map(({ key, title, lane, place }, index) => ({
      key,
      letter: String.fromCharCode(65 + index),
      title,
      lane,
      place,
    })),
    items,
    steps,
  };
}
