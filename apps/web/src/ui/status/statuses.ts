/** Every status that can stand beside a record: one shape, one word, one tone each. */
export type Status =
  | 'in-limits'
  | 'plan'
  | 'soon'
  | 'over-limit'
  | 'in-tolerance'
  | 'not-verified'
  | 'blocked'
  | 'open'
  | 'signed'
  | 'to-inspect'
  | 'finding'
  | 'changed'
  | 'rejected'
  | 'not-applicable'
  | 'closed';

export type Tone = 'ink' | 'quiet' | 'plan' | 'soon' | 'over' | 'unverified' | 'blocked';

export interface StatusLook {
  /** At most 16 characters. */
  readonly word: string;
  readonly tone: Tone;
}

export const STATUS_LOOKS = {
  'in-limits': { word: 'In limits', tone: 'quiet' },
  plan: { word: 'Plan', tone: 'plan' },
  soon: { word: 'Soon', tone: 'soon' },
  'over-limit': { word: 'Over limit', tone: 'over' },
  'in-tolerance': { word: 'In tolerance', tone: 'soon' },
  'not-verified': { word: 'Not verified', tone: 'unverified' },
  blocked: { word: 'Blocked', tone: 'blocked' },
  open: { word: 'Open', tone: 'ink' },
  signed: { word: 'Signed', tone: 'ink' },
  'to-inspect': { word: 'To inspect', tone: 'ink' },
  finding: { word: 'Finding', tone: 'ink' },
  changed: { word: 'Changed', tone: 'soon' },
  rejected: { word: 'Rejected', tone: 'over' },
  'not-applicable': { word: 'Not applicable', tone: 'quiet' },
  closed: { word: 'Closed', tone: 'quiet' },
} as const satisfies Record<Status, StatusLook>;

export const ALL_STATUSES = Object.keys(STATUS_LOOKS).filter((key): key is Status => key in STATUS_LOOKS);
