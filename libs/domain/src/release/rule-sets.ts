import type { CalendarDate } from '../units/calendar.js';

/**
 * The law an airframe is maintained under, as dated data.
 *
 * The statement is in our own words, after the source named; the operator's manual may prescribe others.
 */
export interface RuleSet {
  readonly code: string;
  readonly name: string;
  readonly effectiveFrom: CalendarDate;
  /** What the certificate of a release is called. */
  readonly certificateTitle: string;
  /** What the signer of a release states, one thing each, as the certificate lists them. */
  readonly releaseElements: readonly string[];
  /** The same as one sentence. */
  readonly releaseStatement: string;
  readonly source: string;
  /** Where a counted day begins: at midnight UTC, or local as the operator establishes. */
  readonly dayZone: 'utc' | 'operator';
  /** Whether one person may inspect their own work again, where the case is recorded. */
  readonly onePersonReinspection: boolean;
  /** What the signer must state about themselves. */
  readonly signerIdentity: string;
}

const ELEMENTS_121 = [
  'The work was done in accordance with the requirements of the operator’s manual',
  'every item required to be inspected was inspected by an authorised person who found it satisfactory',
  'no condition is known that makes the aircraft unairworthy',
  'and so far as the work performed is concerned the aircraft is in condition for safe operation',
];

const ELEMENTS_43 = [
  'The work described was done in accordance with current data',
  'and with respect to it the aircraft or component is approved for return to service',
];

const ELEMENTS_145 = [
  'The work specified, except as otherwise specified, was carried out in accordance with Part-145',
  'and in respect to that work the aircraft or component is considered ready for release to service',
];

const CRS = 'Certificate of release to service';

/** The rule sets known, each from its date on. The dates are from memory. */
export const RULE_SETS: readonly RuleSet[] = [
  {
    code: 'us-121',
    name: 'US air carrier (14 CFR part 121)',
    effectiveFrom: '1964-01-01',
    certificateTitle: 'Airworthiness release',
    releaseElements: ELEMENTS_121,
    releaseStatement: `${ELEMENTS_121.join('; ')}.`,
    source: '14 CFR 121.709',
    dayZone: 'operator',
    onePersonReinspection: false,
    signerIdentity: 'Name, certificate number and kind of certificate',
  },
  {
    code: 'us-other',
    name: 'US, other than air carriers (14 CFR parts 43 and 91)',
    effectiveFrom: '1964-01-01',
    certificateTitle: 'Approval for return to service',
    releaseElements: ELEMENTS_43,
    releaseStatement: `${ELEMENTS_43.join(', ')}.`,
    source: '14 CFR 43.9',
    dayZone: 'operator',
    onePersonReinspection: false,
    signerIdentity: 'Name, certificate number and kind of certificate',
  },
  {
    code: 'eu-145',
    name: 'EU (Regulation (EU) 1321/2014, Part-145)',
    effectiveFrom: '2014-12-01',
    certificateTitle: CRS,
    releaseElements: ELEMENTS_145,
    releaseStatement: `${ELEMENTS_145.join(', ')}.`,
    source: 'Regulation (EU) 1321/2014, 145.A.50; compare the wording with the approved text',
    dayZone: 'operator',
    onePersonReinspection: true,
    signerIdentity: 'Name, authorisation number and approval number of the organisation',
  },
  {
    code: 'uk-145',
    name: 'UK (Regulation (EU) 1321/2014 as retained, Part-145)',
    effectiveFrom: '2021-01-01',
    certificateTitle: CRS,
    releaseElements: ELEMENTS_145,
    releaseStatement: `${ELEMENTS_145.join(', ')}.`,
    source: 'UK Regulation (EU) 1321/2014, 145.A.50; compare the wording with the approved text',
    dayZone: 'operator',
    onePersonReinspection: true,
    signerIdentity: 'Name, authorisation number and approval number of the organisation',
  },
];

/** The rule set of that code in force on a date: the newest from that date or before; null when there is none. Total. */
export function ruleSetOn(
  code: string,
  on: CalendarDate,
  ruleSets: readonly RuleSet[] = RULE_SETS,
): RuleSet | null {
  return ruleSets.reduce<RuleSet | null>((found, ruleSet) => {
    if (ruleSet.code !== code || ruleSet.effectiveFrom > on) return found;
    return found === null || ruleSet.effectiveFrom > found.effectiveFrom ? ruleSet : found;
  }, null);
}
