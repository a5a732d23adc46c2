import type { HttpClient } from '../http-client.js';
import { done } from '../scenario/problem.js';

interface StepToWrite {
  readonly key: string;
  readonly captures?: readonly object[];
  readonly waitsFor?: readonly string[];
  readonly inspection?: 'none' | 'independent';
  readonly moves?: 'removal' | 'installation';
}

const STEPS: readonly StepToWrite[] = [
  { key: 'make-safe', captures: [{ kind: 'check', key: 'safe', label: 'Breakers pulled and tagged' }] },
  {
    key: 'remove',
    captures: [{ kind: 'component-off', key: 'off', label: 'Serial off' }],
    waitsFor: ['make-safe'],
    moves: 'removal',
  },
  { key: 'accept', captures: [{ kind: 'papers', key: 'papers', label: 'Plate and papers' }] },
  {
    key: 'install',
    captures: [{ kind: 'component-on', key: 'on', label: 'Serial on' }],
    waitsFor: ['remove'],
    inspection: 'independent',
    moves: 'installation',
  },
  {
    key: 'remark',
    captures: [{ kind: 'text', key: 'note', label: 'Remark', required: true }],
    inspection: 'independent',
  },
];

/** Publishes a change in five steps: make safe, remove, accept the papers, install, and a remark. Answers its id. */
export async function publishChange(
  client: HttpClient,
  { kind = 'engine-change', code = 'TEST-EC' } = {},
): Promise<string> {
  const group = { key: 'all', letter: 'A', title: 'All', lane: 'both', place: 'core-left' };
  const { id } = done(
    await client.post<{ readonly id: string }>('/api/procedures', {
      ...{ code, revision: '1', title: 'Change in five steps', kind },
      ...{ document: 'Test manual, chapter 71', documentRevision: '1' },
      content: {
        groups: [group],
        items: [],
        steps: STEPS.map(
          ({ key, captures = [], waitsFor = [], inspection = 'none', moves = null }, index) => ({
            key,
            number: index + 1,
            group: 'all',
            title: `Step ${key}`,
            text: null,
            cautions: [],
            source: { document: 'Test manual', revision: '1' },
            waitsFor,
            inspection,
            captures,
            opens: [],
            closes: [],
            moves,
          }),
        ),
      },
    }),
  );
  return id;
}
