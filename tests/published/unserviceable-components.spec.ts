import { describe, expect, it } from '@jest/globals';
import type { ChangingComponent } from '@strutbook/domain/changes/change.js';
import { objectionsToFitting } from '@strutbook/domain/changes/objections-to-fitting.js';
import { unfitBecause } from '@strutbook/domain/serviceability/unfit.js';
import { instant } from '@strutbook/domain/units/minutes.js';

const SLOT = { id: 's', kind: 'part', positionNumber: null, authorisedModelIds: null, stays: [] };

const fitting = (unfit: ReturnType<typeof unfitBecause>) => {
  const component: ChangingComponent = {
    ...{ id: 'p', serial: 'D-9', kind: 'part', modelId: null, serviceable: true, unfit },
    ...{ opening: null, manufacturedAt: null, scrappedAt: null, stays: [] },
  };
  return objectionsToFitting(component, { slot: SLOT }, instant(100)).map(({ code, severity }) => [
    code,
    severity,
  ]);
};

/**
 * Source: Commission Regulation (EU) No 1321/2014, Annex I (Part-M), M.A.504(a) to (c): components that are unserviceable
 * or of which it is not known are segregated, and do not re-enter the supply system. Serials and tags invented.
 */
describe('a part asked for by its tag (Part-M, M.A.504)', () => {
  const openVisit = null;

  it('is held back while its newest tag says unserviceable or quarantine', () => {
    for (const status of ['unserviceable', 'quarantine'] as const) {
      const tag = { status, tagNumber: 'T-1' };
      expect(fitting(unfitBecause({ tag, openVisit }))).toEqual([['PART_UNSERVICEABLE', 'blocking']]);
    }
  });

  it('may be fitted once a newer tag says serviceable', () => {
    expect(fitting(unfitBecause({ tag: { status: 'serviceable', tagNumber: 'T-2' }, openVisit }))).toEqual(
      [],
    );
  });

  it('is held back while it was sent to a shop and not returned', () => {
    expect(fitting(unfitBecause({ tag: null, openVisit: 'RO-1' }))).toEqual([
      ['PART_UNSERVICEABLE', 'blocking'],
    ]);
  });
});
