import { describe, expect, it } from '@jest/globals';
import { objectionText } from './objection-text.js';

describe('the words for an objection', () => {
  it('tell hours as h:mm', () => {
    const detail = {
      serial: 'D-1',
      partNumber: 'P-1',
      remaining: null,
      limit: null,
      remainingMinutes: -61,
      minutesLimit: 6000,
    };
    expect(objectionText({ code: 'OVER_LIMIT', detail }).reason).toBe(
      'Its life limit is passed: 1:01 past 100:00 hours.',
    );
  });

  it('name a component without a part number by its serial number', () => {
    expect(objectionText({ code: 'PART_UNSERVICEABLE', detail: { serial: 'E-9', model: 'm' } }).record).toBe(
      'Component E-9',
    );
    expect(objectionText({ code: 'PART_UNSERVICEABLE', detail: { serial: 'E-9', position: 2 } }).record).toBe(
      'Engine E-9 at position 2',
    );
  });

  it('tell what a log gap is', () => {
    const pages = objectionText({
      code: 'LOG_GAP',
      detail: { reason: 'pages', pageBefore: 'L-1', page: 'L-3' },
    });
    expect(pages).toMatchObject({
      record: 'Log page L-3',
      reason: 'It follows page L-1: a page may be missing, and with it its hours and cycles.',
    });
    const stations = objectionText({
      code: 'LOG_GAP',
      detail: { reason: 'stations', arrivedAt: 'AAA', leftFrom: 'BBB', page: null },
    });
    expect(stations).toMatchObject({
      record: 'Flight log',
      reason: expect.stringContaining('left from BBB'),
    });
  });

  it('name a step inside a sentence without its full stop', () => {
    const detail = { number: 8, title: 'Open both fan cowls.' };
    expect(objectionText({ code: 'STEP_UNSIGNED', detail }).record).toBe('Step 8, Open both fan cowls');
  });
});
