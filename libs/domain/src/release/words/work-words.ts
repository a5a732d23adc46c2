import type { WorkObjectionCode } from '../objection.js';
import type { Detail, Phrase } from './phrase.js';

// Titles may end in a full stop; inside a sentence it would end it.
const title = (d: Detail) => String(d['title']).replace(/\.$/, '');
const step = (d: Detail) => `Step ${d['number']}, ${title(d)}`;
const point = (d: Detail) => (d['point'] == null ? '' : `, point ${d['point']}`);
const captured = (d: Detail) => `${step(d)}: ${d['label']}${point(d)}`;
const person = (d: Detail) => `${d['person']}`;
const side = (d: Detail) => (d['side'] === null || d['side'] === undefined ? '' : `, ${d['side']}`);

const OPENED: Readonly<Record<string, string>> = {
  connection: 'parted',
  cowl: 'opened',
  panel: 'opened',
  safety: 'put out of service',
};

/** The words for what is held against the work: each names its step where there is one. */
export const WORK_PHRASES = {
  STEP_UNSIGNED: (d) => ({
    record: step(d),
    reason:
      d['signedBefore'] == null
        ? 'It is not signed.'
        : `It was changed after ${d['signedBefore']} signed it, and is not signed for its present content.`,
    fix: 'Have it signed by an authorised person.',
  }),
  CAPTURE_MISSING: (d) => ({
    record: captured(d),
    reason: 'It is signed, but this is not recorded in it.',
    fix: 'Record it, and sign the step for its present content.',
  }),
  INSPECTION_MISSING: (d) => ({
    record: step(d),
    reason: `${person(d)} did it; the inspection by another person is not signed.`,
    fix: 'Have an authorised person who did not do the work inspect it and sign.',
  }),
  INSPECTION_BY_SAME_PERSON: (d) => ({
    record: step(d),
    reason: `${person(d)} did the work and inspected it.`,
    fix: 'Undo the inspection, and have another authorised person inspect it and sign.',
  }),
  ONE_PERSON_REINSPECTION: (d) => ({
    record: step(d),
    reason: `${person(d)} did the work and inspected it again, for a recorded reason.`,
    fix: 'Nothing, where the unforeseen case is recorded; another person may still inspect it.',
  }),
  TORQUE_OUT_OF_RANGE: (d) => ({
    record: captured(d),
    reason: `The last torque recorded is not accepted. ${d['why']}`,
    fix: 'Torque it again within its range and record it.',
  }),
  TOOL_NOT_USABLE: (d) => ({
    record: `${d['tool'] === null ? 'Tool' : `Tool ${d['tool']}`}, used in step ${d['number']}, ${title(d)}`,
    reason: `${d['label']}${point(d)}: ${d['why']}`,
    fix: 'Do it again with a tool in date and in range, and record it.',
  }),
  LEAK_CHECK_INCOMPLETE: (d) => ({
    record: captured(d),
    reason: `The look for leaks is not complete. ${d['why']}`,
    fix: 'Look again for the time and at the power that the data asks for, and record both.',
  }),
  LEAK_FOUND: (d) => ({
    record: captured(d),
    reason: `A leak is recorded. ${d['why']}`,
    fix: 'Repair it, look again, and record what was found.',
  }),
  PAPERS_REJECTED: (d) => ({
    record: captured(d),
    reason: `The papers of what is to be fitted are not accepted. ${d['why']}`,
    fix: 'Put the component in quarantine; fit one whose plate, tag and document agree.',
  }),
  ENTRY_REJECTED: (d) => ({
    record: captured(d),
    reason: `What was last recorded is not accepted. ${d['why']}`,
    fix: 'Put it right, and record it again.',
  }),
  ITEM_OPEN: (d) => ({
    record: `${d['item']}${side(d)}`,
    reason: `It was ${OPENED[String(d['kind'])] ?? 'opened'} in step ${d['number']}, ${title(d)}, and no signed step closes it.`,
    fix: 'Close it, and sign the step that says so.',
  }),
  COUNTS_DIFFER: (d) => ({
    record: `Count of ${d['what']}`,
    reason: `Out: ${d['out'] ?? 'not counted'}. In: ${d['in'] ?? 'not counted'}.`,
    fix: 'Find what is missing before anything is closed, and record the count again.',
  }),
  ORDER_NOT_MADE: (d) => ({
    record: `Order for the ${d['place']}`,
    reason: `${d['why']}`,
    fix: 'Make the change by its steps, amend the order, or withdraw the package.',
  }),
  ORDER_DIFFERS: (d) => ({
    record: d['place'] === undefined ? step(d) : `Order for the ${d['place']}`,
    reason: `${d['why']}`,
    fix: 'Stop; compare aircraft, position and plate with the order. Put the change right, or have the order amended.',
  }),
  SIGNER_NOT_AUTHORISED: (d) => ({
    record: person(d),
    reason: `Signed ${d['scope'] === 'inspection' ? 'an inspection' : 'work'} on ${d['on']}, and no authorisation that stands covers that day.`,
    fix: 'Record the authorisation with its reference, or have the steps signed by somebody authorised.',
  }),
  RELEASER_NOT_AUTHORISED: (d) => ({
    record: person(d),
    reason: 'No authorisation to release this type is in force today.',
    fix: 'Have somebody authorised release it, or record the authorisation with its reference.',
  }),
  RELEASER_WITHOUT_LICENCE: (d) => ({
    record: person(d),
    reason: 'No certificate number is recorded; a release must state it.',
    fix: 'Have the certificate number recorded, or have somebody else release it.',
  }),
} as const satisfies Record<WorkObjectionCode, Phrase>;
