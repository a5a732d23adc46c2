import type { Role } from './roles.js';

/** Who may use a route: everyone, everyone signed in, or those who hold one of the roles. */
export type Authority = 'anyone' | 'signed-in' | readonly Role[];

const KEEPERS: readonly Role[] = ['records', 'administrator'];
const TOOL_KEEPERS: readonly Role[] = ['records', 'planner', 'administrator'];
const GAP_EXPLAINERS: readonly Role[] = ['records', 'administrator', 'certifying-staff'];
const CHANGERS: readonly Role[] = ['technician', 'records', 'administrator'];
const REQUIREMENT_KEEPERS: readonly Role[] = ['planner', 'records', 'administrator'];
const FLIGHT_PLANNERS: readonly Role[] = ['planner', 'records', 'administrator'];
const PROCEDURE_KEEPERS: readonly Role[] = ['planner', 'records', 'administrator'];
const PACKAGE_OPENERS: readonly Role[] = ['planner', 'records', 'certifying-staff', 'administrator'];
const PACKAGE_WITHDRAWERS: readonly Role[] = ['planner', 'records', 'administrator'];
const STEP_ADDERS: readonly Role[] = ['planner', 'certifying-staff'];
const WORKERS: readonly Role[] = ['technician', 'inspector', 'certifying-staff'];
const CERTIFIERS: readonly Role[] = ['certifying-staff'];
const ORDERERS: readonly Role[] = ['planner', 'certifying-staff', 'records'];
const CHECKERS: readonly Role[] = ['auditor', 'records', 'administrator'];
const OVERSEERS: readonly Role[] = ['auditor', 'administrator'];
const TAGGERS: readonly Role[] = ['technician', 'certifying-staff', 'records', 'administrator'];
const ADMINISTRATORS: readonly Role[] = ['administrator'];

/** Every route with its authority. A route that is not here is refused to everyone. */
export const POLICY: Readonly<Record<string, Authority>> = {
  // The service itself
  'GET /health/live': 'anyone',
  'GET /health/ready': 'anyone',

  // Sessions and people
  'GET /api/session': 'signed-in',
  'POST /api/session': 'anyone',
  'DELETE /api/session': 'anyone',
  'POST /api/session/password': 'signed-in',
  'POST /api/session/pin': 'signed-in',
  'GET /api/people': OVERSEERS,
  'POST /api/people': ADMINISTRATORS,
  'POST /api/people/:id/disable': ADMINISTRATORS,

  'GET /api/authorisations': 'signed-in',
  'POST /api/authorisations': ADMINISTRATORS,
  'POST /api/authorisations/:id/end': ADMINISTRATORS,
  'POST /api/authorisations/:id/void': ADMINISTRATORS,

  // Tools that are calibrated
  'GET /api/tools': 'signed-in',
  'POST /api/tools': TOOL_KEEPERS,
  'GET /api/tools/:id': 'signed-in',
  'POST /api/tools/:id/calibrations': TOOL_KEEPERS,
  'POST /api/tool-calibrations/:id/void': TOOL_KEEPERS,

  // The fleet and what is published about its parts
  'GET /api/rule-sets': 'signed-in',
  'GET /api/airframe-types': 'signed-in',
  'POST /api/airframe-types': KEEPERS,
  'GET /api/airframes': 'signed-in',
  'POST /api/airframes': KEEPERS,
  'GET /api/airframes/:id': 'signed-in',
  'GET /api/engine-models': 'signed-in',
  'POST /api/engine-models': KEEPERS,
  'GET /api/life-limits': 'signed-in',
  'POST /api/life-limits': KEEPERS,
  'POST /api/life-limits/preview': KEEPERS,
  'POST /api/life-limits/accept': KEEPERS,
  'POST /api/life-limits/:id/void': KEEPERS,
  'GET /api/engine-models/:id/cycle-rules': 'signed-in',
  'POST /api/engine-models/:id/cycle-rules': KEEPERS,
  'POST /api/cycle-rules/:id/void': KEEPERS,
  'GET /api/locations': 'signed-in',
  'POST /api/locations': KEEPERS,

  // Components, where they are and what they come with
  'GET /api/components': 'signed-in',
  'POST /api/components': KEEPERS,
  'GET /api/components/:id': 'signed-in',
  'GET /api/components/:id/places': 'signed-in',
  'GET /api/components/:id/life-status': 'signed-in',
  'GET /api/components/:id/life-status.csv': 'signed-in',
  'GET /api/components/:id/facts': 'signed-in',
  'GET /api/components/:id/counters': 'signed-in',
  'GET /api/airframes/:id/counters': 'signed-in',
  'GET /api/counter-flights': 'signed-in',
  'GET /api/components/:id/overruns': 'signed-in',
  'GET /api/airframes/:id/overruns': 'signed-in',
  'GET /api/airframes/:id/openings': 'signed-in',
  'POST /api/openings': KEEPERS,
  'POST /api/openings/:id/void': KEEPERS,
  'POST /api/trace-gaps': KEEPERS,
  'POST /api/trace-gaps/:id/void': KEEPERS,
  'POST /api/gap-acceptances': KEEPERS,
  'POST /api/gap-acceptances/:id/void': KEEPERS,
  'POST /api/resets': KEEPERS,
  'POST /api/resets/:id/void': KEEPERS,
  'POST /api/rating-changes': KEEPERS,
  'POST /api/rating-changes/:id/void': KEEPERS,
  'POST /api/placements': KEEPERS,
  'POST /api/placements/:stayId/void': KEEPERS,

  // Shops, what is serviceable, and what is spare
  'GET /api/shop-visits': 'signed-in',
  'GET /api/shop-visits/:id': 'signed-in',
  'POST /api/shop-visits': KEEPERS,
  'POST /api/shop-visits/:id/return': KEEPERS,
  'POST /api/shop-visits/:id/void': KEEPERS,
  'POST /api/shop-visits/:id/return/void': KEEPERS,
  'GET /api/components/:id/serviceability': 'signed-in',
  'POST /api/serviceability-tags': TAGGERS,
  'POST /api/serviceability-tags/:id/void': KEEPERS,
  'POST /api/preservations': TAGGERS,
  'POST /api/preservations/:id/void': KEEPERS,
  'GET /api/spares': 'signed-in',

  // Flights and files of them
  'GET /api/airframes/:id/flights': 'signed-in',
  'POST /api/airframes/:id/flights': KEEPERS,
  'POST /api/flights/:id/void': KEEPERS,
  'POST /api/flights/:id/correct': KEEPERS,
  // What is planned to be flown
  'GET /api/airframes/:id/planned-flights': 'signed-in',
  'POST /api/airframes/:id/planned-flights': FLIGHT_PLANNERS,
  'POST /api/planned-flights/:id/void': FLIGHT_PLANNERS,
  'GET /api/airframes/:id/planned-rates': 'signed-in',
  'POST /api/airframes/:id/planned-rates': FLIGHT_PLANNERS,
  'POST /api/planned-rates/:id/void': FLIGHT_PLANNERS,
  'POST /api/airframes/:id/readiness': 'signed-in',

  'POST /api/flights/:id/gap-notes': GAP_EXPLAINERS,
  'POST /api/gap-notes/:id/void': GAP_EXPLAINERS,
  'GET /api/airframes/:id/ground-runs': 'signed-in',
  'POST /api/airframes/:id/ground-runs': KEEPERS,
  'GET /api/test-cells': 'signed-in',
  'POST /api/test-cells': KEEPERS,
  'GET /api/test-cells/:id/runs': 'signed-in',
  'POST /api/test-cells/:id/runs': KEEPERS,
  'POST /api/ground-runs/:id/void': KEEPERS,
  'GET /api/components/:id/counter-readings': 'signed-in',
  'POST /api/components/:id/counter-readings': KEEPERS,
  'POST /api/components/:id/counter-replacements': KEEPERS,
  'POST /api/counter-readings/:id/void': KEEPERS,
  'POST /api/counter-readings/:id/correct': KEEPERS,
  'GET /api/imports': 'signed-in',
  'POST /api/imports': KEEPERS,
  'GET /api/imports/:id': 'signed-in',
  'POST /api/imports/:id/apply': KEEPERS,
  'POST /api/imports/:id/cancel': KEEPERS,
  'GET /api/imports/:id/errors.csv': 'signed-in',

  // Positions, changes, packages, release
  'GET /api/board': 'signed-in',
  'GET /api/airframes/:id/positions': 'signed-in',
  'POST /api/changes/preview': CHANGERS,
  'POST /api/changes': CHANGERS,
  'GET /api/packages': 'signed-in',
  'GET /api/packages/:id': 'signed-in',
  'GET /api/packages/:id/release-check': 'signed-in',
  'POST /api/packages': PACKAGE_OPENERS,
  'POST /api/packages/:id/withdraw': PACKAGE_WITHDRAWERS,
  'POST /api/packages/:id/release': CERTIFIERS,
  'POST /api/packages/:id/order': ORDERERS,
  // A colleague may sign at this tablet: the signer's own roles and authorisations are asked, not the session's.
  'GET /api/steps/:id/statement': 'signed-in',
  'POST /api/steps/:id/signatures': 'signed-in',
  'POST /api/step-signatures/:id/undo': 'signed-in',
  'GET /api/releases/:id': 'signed-in',

  // Procedures and the steps of packages
  'GET /api/procedures': 'signed-in',
  'GET /api/procedures/:id': 'signed-in',
  'POST /api/procedures': PROCEDURE_KEEPERS,
  'GET /api/my-work': 'signed-in',
  'GET /api/packages/:id/steps': 'signed-in',
  'POST /api/packages/:id/steps': STEP_ADDERS,
  'POST /api/steps/:id/entries': WORKERS,
  'POST /api/steps/:id/photos': WORKERS,
  'POST /api/step-entries/:id/void': WORKERS,
  'GET /api/step-photos/:id': 'signed-in',

  // Requirements and when they were met
  'GET /api/requirements': 'signed-in',
  'POST /api/requirements': REQUIREMENT_KEEPERS,
  'GET /api/requirements/:id': 'signed-in',
  'POST /api/requirements/:id/void': REQUIREMENT_KEEPERS,
  'GET /api/airframes/:id/requirements': 'signed-in',
  'GET /api/components/:id/requirements': 'signed-in',
  'POST /api/accomplishments': KEEPERS,
  'POST /api/accomplishments/:id/correct': KEEPERS,
  'POST /api/accomplishments/:id/void': KEEPERS,
  'POST /api/assessments': REQUIREMENT_KEEPERS,
  'POST /api/assessments/:id/void': REQUIREMENT_KEEPERS,
  'POST /api/variations': REQUIREMENT_KEEPERS,
  'POST /api/variations/:id/void': REQUIREMENT_KEEPERS,
  'GET /api/airframes/:id/occurrences': 'signed-in',
  'POST /api/occurrences': KEEPERS,
  'POST /api/occurrences/:id/void': KEEPERS,

  // What is due, what happened, and whether it adds up
  'GET /api/due-points': 'signed-in',
  'GET /api/due-points/totals': 'signed-in',
  'GET /api/due-points.csv': 'signed-in',
  'GET /api/due-points.ndjson': 'signed-in',
  'GET /api/airframes/:id/history': 'signed-in',
  'GET /api/components/:id/history': 'signed-in',
  'POST /api/documents': 'signed-in',
  'GET /api/documents': 'signed-in',
  'GET /api/documents/:id': 'signed-in',
  'GET /api/jobs/:id': 'signed-in',
  'POST /api/jobs/:id/cancel': 'signed-in',
  'GET /api/trial-balance': CHECKERS,
  'GET /api/trial-balance/airframes/:id': CHECKERS,
  'GET /api/journal': 'signed-in',
};

/** Who may use a route; null when the table does not know it. Total. */
export function authorityOf(method: string, pattern: string): Authority | null {
  return POLICY[`${method === 'HEAD' ? 'GET' : method} ${pattern}`] ?? null;
}

/** Routes open to a person who must choose a password first. */
export const OPEN_BEFORE_PASSWORD: ReadonlySet<string> = new Set([
  'GET /api/session',
  'DELETE /api/session',
  'POST /api/session/password',
]);
