import { describe, expect, test } from '@jest/globals';
import { type ChangeDraft, EMPTY_DRAFT, missingLines, readDraft } from './change-draft.js';

const full: ChangeDraft = {
  ...EMPTY_DRAFT,
  airframeId: 'a-1',
  positionNumber: '3',
  moment: '2026-11-11 14:05',
  outgoingSerial: ' KT-377 ',
  removedToLocation: 'Shop',
  incomingSerial: 'KT-655',
  reason: 'Limit reached',
};

const missingOf = (draft: ChangeDraft) => {
  const read = readDraft(draft);
  return read.ok ? {} : read.missing;
};

describe('a change as typed', () => {
  test('is sent with what was typed, spaces around it left out', () => {
    expect(readDraft(full)).toEqual({
      ok: true,
      request: {
        airframeId: 'a-1',
        positionNumber: 3,
        slot: 'engine',
        outgoingSerial: 'KT-377',
        incomingSerial: 'KT-655',
        boundary: { kind: 'instant', at: '2026-11-11T14:05Z' },
        reason: 'Limit reached',
        removedToLocation: 'Shop',
      },
    });
  });

  test('may leave the position empty, or fill an empty one', () => {
    expect(readDraft({ ...full, goesOn: false, incomingSerial: 'KT-655' })).toMatchObject({
      ok: true,
      request: { incomingSerial: null },
    });
    const filled = readDraft({ ...full, comesOff: false });
    expect(filled).toMatchObject({ ok: true, request: { outgoingSerial: null } });
    expect(filled.ok && 'removedToLocation' in filled.request).toBe(false);
    expect(missingOf({ ...full, comesOff: false, goesOn: false })).toHaveProperty('incomingSerial');
  });

  test('tells its moment as a log page or a date where there is no minute', () => {
    expect(readDraft({ ...full, boundaryKind: 'after-page', page: ' 0417 ' })).toMatchObject({
      request: { boundary: { kind: 'after-page', page: '0417' } },
    });
    expect(readDraft({ ...full, boundaryKind: 'before-first', date: '2026-11-03' })).toMatchObject({
      request: { boundary: { kind: 'before-first', on: '2026-11-03' } },
    });
    expect(missingOf({ ...full, boundaryKind: 'after-page' })).toHaveProperty(['boundary.page']);
    expect(missingOf({ ...full, boundaryKind: 'after-last', date: '03/11/2026' })).toHaveProperty([
      'boundary.on',
    ]);
    expect(missingOf({ ...full, moment: '2026-11-31 10:00' })).toHaveProperty(['boundary.at']);
  });

  test('names what is missing in the order of the form', () => {
    expect(missingLines(missingOf(EMPTY_DRAFT)).map(({ fieldId }) => fieldId)).toEqual([
      'change-airframe',
      'change-position',
      'change-moment',
      'change-outgoing',
      'change-removed-to',
      'change-incoming',
      'change-reason',
    ]);
  });

  test('sends a rating only with an engine that goes on', () => {
    expect(readDraft({ ...full, ratingCode: '84A' })).toMatchObject({ request: { ratingCode: '84A' } });
    const pod = readDraft({ ...full, slot: 'pod', ratingCode: '84A' });
    expect(pod.ok && 'ratingCode' in pod.request).toBe(false);
  });
});
