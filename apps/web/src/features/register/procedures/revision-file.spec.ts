import { describe, expect, test } from '@jest/globals';
import { placeText, readRevision } from './revision-file.js';

describe('a file of a revision', () => {
  test('is told by its code, revision, title and number of steps', () => {
    const text = JSON.stringify({ code: 'A-1', revision: '2', title: 'T', content: { steps: [{}, {}] } });
    expect(readRevision(text)).toMatchObject({
      ok: true,
      file: { code: 'A-1', revision: '2', title: 'T', steps: 2 },
    });
  });

  test('may lack anything; the server says what', () => {
    expect(readRevision('{"content": 3}')).toMatchObject({ ok: true, file: { code: '', steps: 0 } });
  });

  test('is refused when it is no JSON, or no object', () => {
    expect(readRevision('{"code": ')).toMatchObject({ ok: false });
    expect(readRevision('[]')).toEqual({ ok: false, reason: 'The file holds no procedure. Choose another' });
  });
});

describe('a place in a file', () => {
  test('is counted from one, in words', () => {
    expect(placeText('content.steps[3].captures[0].low')).toBe('Step 4, capture 1, low');
    expect(placeText('content.groups[0].letter')).toBe('Group 1, letter');
    expect(placeText('revision')).toBe('Revision');
    expect(placeText('content')).toBe('The file');
  });
});
