import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { type SignedContent, signedStatement } from './statement.js';

const content: SignedContent = {
  purpose: 'release',
  statement: 'The work was done.',
  signer: { personId: 'p', name: 'A. Person', certificate: null },
  subject: { kind: 'package', id: 'w' },
  contentHash: 'ab',
  ruleSet: 'us-121',
  at: instant(5),
};

describe('a signed statement', () => {
  it('holds every member, null where it does not apply', () => {
    expect(signedStatement(content)).toEqual({
      at: 5,
      contentHash: 'ab',
      purpose: 'release',
      ruleSet: 'us-121',
      signer: { certificate: null, name: 'A. Person', personId: 'p' },
      statement: 'The work was done.',
      subject: { id: 'w', kind: 'package' },
      version: 1,
    });
  });
});
