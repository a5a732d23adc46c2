import { describe, expect, it } from '@jest/globals';
import type { ChangeFacts, ChangingComponent } from '@strutbook/domain/changes/change.js';
import { planChange } from '@strutbook/domain/changes/plan-change.js';
import { instant } from '@strutbook/domain/units/minutes.js';

const stayOf = (componentId: string, slotId: string | null) => ({
  ...{ id: `stay of ${componentId}`, componentId, slotId, from: instant(0), to: null },
  locationId: slotId === null ? 'store' : null,
});
const engine = (id: string, slotId: string | null): ChangingComponent => ({
  ...{ id, serial: id, kind: 'engine', modelId: 'm', serviceable: true },
  ...{ opening: null, manufacturedAt: null, scrappedAt: null, stays: [stayOf(id, slotId)] },
});

/** Fits E-40 at position 2, which is empty unless something is there. */
const fitting = (incomingAt: string | null, there: string | null = null) => {
  const components = [engine('E-40', incomingAt), ...(there === null ? [] : [engine(there, 'position 2')])];
  const facts: ChangeFacts = {
    slot: {
      ...{ id: 'position 2', kind: 'engine', positionNumber: 2, authorisedModelIds: null },
      stays: there === null ? [] : [stayOf(there, 'position 2')],
    },
    components: new Map(components.map((component) => [component.id, component])),
    ...{ flights: [], offsetMinutes: 0, lifeObjections: [] },
  };
  const on = { componentId: 'E-40', boundary: { kind: 'instant', at: instant(100) } } as const;
  const planned = planChange({ slotId: 'position 2', off: null, on }, facts);
  return planned.ok ? 'planned' : planned.refusal.code;
};

/** Source: from memory (one engine at one place, one place for one engine). Serials invented. */
describe('an engine to be fitted (from memory)', () => {
  it('is rejected while it is installed elsewhere', () => {
    expect(fitting('position 1')).toBe('ALREADY_INSTALLED');
  });

  it('is rejected at a position that is occupied', () => {
    expect(fitting(null, 'E-22')).toBe('SLOT_OCCUPIED');
  });

  it('goes from the store to a position that is empty', () => {
    expect(fitting(null)).toBe('planned');
  });
});
