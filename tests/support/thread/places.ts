import type { FullRecord } from './full-record.js';

/** A page of the client and its main heading. */
export interface Place {
  readonly name: string;
  readonly path: string;
}

/** Pages that open without naming a record. */
export const PLAIN_PLACES: readonly Place[] = [
  { name: 'positions', path: '/positions' },
  { name: 'flights', path: '/flights' },
  { name: 'entering flights', path: '/flights/enter' },
  { name: 'work', path: '/work' },
  { name: 'opening a package', path: '/packages/new' },
  { name: 'logging a past change', path: '/changes/new' },
  { name: 'due', path: '/due' },
  { name: 'spares', path: '/spares' },
  { name: 'shop visits', path: '/shop-visits' },
  { name: 'register', path: '/register' },
  { name: 'airframe types', path: '/register/airframe-types' },
  { name: 'airframes', path: '/register/airframes' },
  { name: 'engine models', path: '/register/engine-models' },
  { name: 'life limits', path: '/register/life-limits' },
  { name: 'a revision of limits', path: '/register/life-limits/revision' },
  { name: 'locations', path: '/register/locations' },
  { name: 'components', path: '/register/components' },
  { name: 'tools', path: '/tools' },
  { name: 'procedures', path: '/procedures' },
  { name: 'requirements', path: '/requirements' },
  { name: 'directives and bulletins', path: '/directives' },
  { name: 'history', path: '/history' },
  { name: 'trial balance', path: '/trial-balance' },
  { name: 'imports', path: '/imports' },
  { name: 'people', path: '/people' },
  { name: 'what I may sign', path: '/my-authority' },
];

/** Pages of one record each. */
export function recordPlaces(record: FullRecord): readonly Place[] {
  const { airframe, engineId, engines, openPackage, blockedPackage, releasedPackage } = record;
  const part = engines[0]?.partIds[0] ?? '';
  return [
    { name: 'an airframe', path: `/positions/${airframe.id}` },
    { name: 'an airframe as of then', path: `/positions/${airframe.id}?at=2025-01-02T00:00Z` },
    { name: 'the readiness of an airframe', path: `/positions/${airframe.id}/readiness` },
    { name: 'an engine', path: `/components/${engineId}` },
    { name: 'the parts of an engine', path: `/components/${engineId}?tab=parts` },
    { name: 'the places of an engine', path: `/components/${engineId}?tab=places` },
    { name: 'the counters of an engine, how we got them', path: `/components/${engineId}/counters` },
    { name: 'the counters of an airframe, how we got them', path: `/positions/${airframe.id}/counters` },
    { name: 'a part', path: `/components/${part}` },
    { name: 'the status of limited parts', path: `/components/${engineId}/life-status` },
    { name: 'a package', path: `/packages/${openPackage.id}` },
    { name: 'a released package', path: `/packages/${releasedPackage.id}` },
    { name: 'a release check', path: `/packages/${openPackage.id}/release-check` },
    { name: 'a blocked release check', path: `/packages/${blockedPackage.id}/release-check` },
    { name: 'an airframe in the register', path: `/register/airframes/${airframe.id}` },
    { name: 'an engine in the register', path: `/register/components/${engineId}` },
    { name: 'a tool', path: `/tools/${record.toolId}` },
    { name: 'a requirement', path: `/requirements/${record.requirementId}` },
    { name: 'the directives of an airframe', path: `/directives?airframe=${airframe.id}` },
    { name: 'a procedure', path: `/procedures/${record.procedureId}` },
    { name: 'the history of an airframe', path: `/history/airframes/${airframe.id}` },
    { name: 'the history of an engine', path: `/history/components/${engineId}` },
    { name: 'the trial balance of an airframe', path: `/trial-balance?airframe=${airframe.id}` },
    { name: 'an import with errors', path: `/imports/${record.importWithErrors}` },
  ];
}
