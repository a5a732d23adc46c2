import { objectionText } from '@strutbook/domain/release/objection-text.js';
import type { ReleaseSnapshot } from '@strutbook/domain/release/snapshot.js';
import { ceil } from '@strutbook/domain/units/fraction.js';
import { formatHours } from '@strutbook/domain/units/minutes.js';
import type { Counters } from '@strutbook/domain/usage/since.js';
import type { CertificateFact, CertificateWords } from '../../records/releases/frozen-release.js';
import type { MadeCheck } from './release-check.js';
import { printed, workSummary } from './work.js';

/** Who signs, as the certificate tells it. */
export interface CertificateSigner {
  readonly name: string;
  readonly licence: string;
  /** The reference of the authorisation that is in force. */
  readonly authorisation: string | null;
  readonly operatorName: string;
  readonly number: string;
  readonly signedAt: string;
}

const NOT_KNOWN = 'not known';

/**
 * The words of a release's certificate: what is released, the order and the data, counters, each thing the signer
 * states, what stays open, and who signs.
 *
 * Source: 14 CFR 121.709(b), 14 CFR 43.9(a), 145.A.50 of Reg. (EU) 1321/2014; the lists of contents from memory. Total.
 */
export function certificateWords(
  made: MadeCheck,
  airframe: Counters | null,
  signer: CertificateSigner,
): CertificateWords {
  const { ruleSet, objections } = made;
  return {
    title: ruleSet.certificateTitle,
    facts: [{ name: 'Release', value: signer.number }, ...subjectFacts(made), ...workFacts(made)],
    counters: counterFacts(made, airframe),
    elements: ruleSet.releaseElements.map(sentence),
    source: `${ruleSet.name}: ${ruleSet.source}`,
    open: objections.map((objection) => {
      const { record, reason } = objectionText(objection);
      return `${record}: ${reason}`;
    }),
    signer: [
      { name: 'Signed by', value: signer.name },
      { name: 'Certificate number', value: signer.licence },
      { name: 'Authorisation', value: signer.authorisation ?? NOT_KNOWN },
      { name: 'Organisation', value: signer.operatorName },
      { name: 'Signed on', value: printed(signer.signedAt) },
    ],
  };
}

function sentence(element: string): string {
  const words = element.replace(/^and /, '');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

function subjectFacts({ work: { airframe, component } }: MadeCheck): CertificateFact[] {
  return [
    ...(airframe === null
      ? []
      : [
          { name: 'Aircraft', value: airframe.registration },
          { name: 'Type', value: airframe.type },
          { name: 'Serial number', value: airframe.serial },
        ]),
    ...(component === null
      ? []
      : [
          {
            name: 'Component',
            value: `${component.description}, part number ${component.partNumber}, serial number ${component.serial}`,
          },
        ]),
  ];
}

function workFacts({ work, snapshot }: MadeCheck): CertificateFact[] {
  const { procedure, reference } = work;
  const steps = snapshot.work.steps.length;
  const closed = snapshot.requirements.filter((requirement) => requirement.closedHere);
  return [
    { name: 'Work order', value: reference === null ? work.number : `${work.number}, order ${reference}` },
    { name: 'Title', value: work.title },
    { name: 'Work done', value: workSummary(work) },
    ...(steps === 0
      ? []
      : [{ name: 'Steps', value: `${steps} of ${steps} signed, kept in package ${work.number}` }]),
    ...(procedure === null
      ? []
      : [
          {
            name: 'Data',
            value: `${procedure.document}, revision ${procedure.documentRevision}; procedure ${procedure.code}, revision ${procedure.revision}`,
          },
        ]),
    ...closed.map(({ name, on }) => ({ name: 'Requirement met', value: `${name}, on ${on}` })),
  ];
}

function counterFacts({ work, snapshot }: MadeCheck, airframe: Counters | null): CertificateFact[] {
  return [
    ...(work.airframe === null ? [] : [{ name: 'Airframe', value: counterWords(airframe) }]),
    ...engineFacts(snapshot),
  ];
}

function engineFacts({ positions, component }: ReleaseSnapshot): CertificateFact[] {
  const engines = positions.flatMap(({ number, engine }) =>
    engine === null ? [] : [{ name: `Engine ${number}`, engine }],
  );
  const own = component === null ? [] : [{ name: 'Component', engine: component.as }];
  return [...engines, ...own].map(({ name, engine: { serial, totals, ratingName } }) => ({
    name,
    value: `serial number ${serial}, ${hours(totals.minutes)}, ${cyclesWords(totals.cycles)}${ratingName === null ? '' : `, rating ${ratingName}`}`,
  }));
}

function counterWords(counters: Counters | null): string {
  const cycles = counters?.cycles == null ? null : ceil(counters.cycles);
  return `${hours(counters?.minutes ?? null)}, ${cyclesWords(cycles)}`;
}

function hours(minutes: number | null): string {
  return minutes === null ? `hours ${NOT_KNOWN}` : `${formatHours(minutes)} hours`;
}

function cyclesWords(cycles: number | null): string {
  return cycles === null ? `cycles ${NOT_KNOWN}` : `${cycles} cycles`;
}
