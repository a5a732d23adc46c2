import { describe, expect, it } from '@jest/globals';
import { EMPTY_ORDER } from '../order/order-draft.js';
import {
  EMPTY_OPENING,
  faultsIn,
  type OpeningDraft,
  openingRequest,
  sectionOfField,
  sectionsOf,
} from './opening-draft.js';

const THERE = { id: 'c-1', serialNumber: 'KT-377', partNumber: 'K84-0001', description: 'K84 engine' };

const CHANGE: OpeningDraft = {
  ...EMPTY_OPENING,
  kind: 'engine-change',
  airframeId: 'a-417',
  procedureId: 'pr-1',
  order: {
    ...EMPTY_ORDER,
    positionNumber: '3',
    incomingSerial: 'KT-655',
    removedTo: 'Engine shop',
    reason: ' limit lowered ',
  },
};

describe('a package to be opened', () => {
  it('has an order where something is changed, and none for an inspection', () => {
    expect(sectionsOf(CHANGE)).toEqual(['work', 'order', 'steps', 'requirements', 'look-over']);
    expect(sectionsOf({ ...CHANGE, kind: 'inspection' })).not.toContain('order');
  });

  it('names what is missing, by the server’s names of the fields', () => {
    expect(Object.keys(faultsIn('work', EMPTY_OPENING, null))).toEqual(['kind', 'airframeId']);
    const bare = { ...CHANGE, order: EMPTY_ORDER };
    expect(Object.keys(faultsIn('order', bare, THERE))).toEqual([
      'order.positionNumber',
      'order.removedToLocation',
      'order.incomingSerial',
      'order.reason',
    ]);
    expect(faultsIn('order', CHANGE, THERE)).toEqual({});
  });

  it('needs a step of its own only where no order and no procedure make one', () => {
    const own: OpeningDraft = { ...CHANGE, stepsFrom: 'own' };
    expect(faultsIn('steps', own, THERE)).toEqual({});
    expect(Object.keys(faultsIn('steps', { ...own, kind: 'directive' }, null))).toEqual(['steps']);
    const blank = { ...own, ownSteps: [{ title: ' ', text: '', inspected: false }] };
    expect(Object.keys(faultsIn('steps', blank, THERE))).toEqual(['steps.0.title']);
  });

  it('is sent with what stands there as what comes off, and without it for an empty place', () => {
    expect(openingRequest(CHANGE, 'Engine change', THERE)).toEqual({
      kind: 'engine-change',
      title: 'Engine change',
      airframeId: 'a-417',
      procedureId: 'pr-1',
      order: {
        positionNumber: 3,
        slot: 'engine',
        outgoingSerial: 'KT-377',
        removedToLocation: 'Engine shop',
        incomingSerial: 'KT-655',
        reason: 'limit lowered',
      },
    });
    const { order } = openingRequest(CHANGE, 'Engine change', null);
    expect(order).not.toHaveProperty('outgoingSerial');
    expect(order).not.toHaveProperty('removedToLocation');
  });

  it('leads to the section of the field that is refused', () => {
    expect(['kind', 'order.reason', 'steps.0.title', 'requirements.1', 'title'].map(sectionOfField)).toEqual([
      'work',
      'order',
      'steps',
      'requirements',
      'look-over',
    ]);
  });
});
