import { Injectable } from '@nestjs/common';
import type { DimensionDue } from '@strutbook/domain/due/dimension-due.js';
import { duePoint } from '@strutbook/domain/due/due-point.js';
import { compare } from '@strutbook/domain/units/fraction.js';
import { cycleUnits } from '@strutbook/domain/usage/cycle-rule.js';
import type { Tx } from '../../platform/database/database.js';
import { dayFromWire } from '../../platform/http/instants.js';
import type { DuePointRow } from '../due-points/due-point-row.js';
import { Structure } from '../stays/structure.js';
import { POD_RULE } from '../usage/use-facts.js';
import { type Standing, Standings } from './standings.js';
import type { SubjectCounters } from './subject-counters.js';
import type { Scope } from './subjects.js';

/** Where on clocks and calendars requirements fall due, for the projection. */
@Injectable()
export class RequirementPoints {
  constructor(
    private readonly standings: Standings,
    private readonly structure: Structure,
  ) {}

  /** The due points of all requirements (or those of some codes) for what a scope names, as the records say they are now. */
  async fromFacts(
    tx: Tx,
    operatorId: number,
    scope: Scope,
    codes?: readonly string[],
  ): Promise<DuePointRow[]> {
    const standings = await this.standings.of(tx, operatorId, scope, codes === undefined ? {} : { codes });
    const components = standings.flatMap(({ subject }) => subject.componentId ?? []);
    const engineOf =
      components.length === 0
        ? new Map<string, string>()
        : await this.structure.engineOf(tx, operatorId, [...new Set(components)], null);
    return standings.flatMap((standing) => pointsOf(standing, engineOf.get(standing.subject.id) ?? null));
  }
}

function pointsOf(standing: Standing, engineId: string | null): DuePointRow[] {
  const { requirement, subject, counters, due, reasons, isDoubtful } = standing;
  // What was never assessed says so even where it is met.
  if (due.kind === 'not-applicable' || (due.kind === 'closed' && !isDoubtful)) return [];
  const base = {
    componentId: subject.componentId,
    airframeId: subject.airframeId,
    positionId: subject.positionId,
    engineId,
    carrierId: counters.clock?.carrierId ?? null,
    kind: 'requirement',
    requirementId: requirement.id,
    ...{ cycleRuleId: null, lifeLimitId: null, flagged: false, ...NOTHING_DUE },
  } as const;
  const known = isDoubtful || due.kind === 'closed' ? [] : knownPoints(due, counters);
  const isUnknown = isDoubtful || (due.kind === 'open' && due.unknown.length > 0);
  const unknown = { verdict: 'not-verified', reason: reasons.map(({ code }) => code).join(' ') } as const;
  return [...known, ...(isUnknown ? [unknown] : [])].map((point) => ({ ...base, ...point }));
}

const NOTHING_DUE = {
  dimension: 'none',
  span: null,
  dueAt: null,
  dueOn: null,
  latestAt: null,
  latestOn: null,
  bound: false,
  reason: null,
} as const;

type Point = Pick<DuePointRow, 'verdict'> &
  Partial<
    Pick<
      DuePointRow,
      'dimension' | 'cycleRuleId' | 'span' | 'dueAt' | 'dueOn' | 'latestAt' | 'latestOn' | 'bound' | 'reason'
    >
  >;

/** What can be told: of whichever comes last nothing before its event, but the outer bound. */
function knownPoints(
  { dues, event, ...due }: Extract<Standing['due'], { kind: 'open' }>,
  counters: SubjectCounters,
): Point[] {
  const waits = due.combined === 'last' && event !== null && event.happenedOn === null;
  const told = dues.filter(({ isBound }) => isBound || !waits);
  const isByEvent = event !== null && (due.combined === 'first' || dues.every(({ isBound }) => isBound));
  const happened: Point[] =
    isByEvent && event.happenedOn !== null
      ? [
          {
            ...{ verdict: 'limited', dimension: 'event', reason: `EVENT:${event.kind}` },
            dueOn: dayFromWire(event.happenedOn),
          },
        ]
      : [];
  return [...told.map((each) => pointOf(each, counters)), ...happened];
}

function pointOf(due: DimensionDue, counters: SubjectCounters): Point {
  const { dimension, interval, remainingExact, latestExact, isBound: bound } = due;
  const point = { verdict: 'limited', span: interval, bound } as const;
  const isGranted = compare(latestExact, remainingExact) > 0;
  const day = (on: string | null) => (on === null ? null : dayFromWire(on));
  const { clock, rule } = counters;
  const on = (reading: number, denominator: number) => ({
    dueAt: duePoint({ remainingExact, reading, denominator }),
    latestAt: isGranted ? duePoint({ remainingExact: latestExact, reading, denominator }) : null,
  });
  switch (dimension) {
    case 'days':
    case 'months':
      return { ...point, dimension, dueOn: day(due.dueOn), latestOn: isGranted ? day(due.latestOn) : null };
    case 'minutes':
      return { ...point, dimension, ...on(clock?.reading.minutes ?? 0, 1) };
    case 'cycles': {
      // Off the wing it hangs on no clock: one that stands still at zero.
      const isByFlight = clock !== undefined && rule === POD_RULE;
      return {
        ...point,
        dimension: isByFlight ? 'flights' : dimension,
        cycleRuleId: rule === undefined || isByFlight ? null : rule.id,
        ...on(
          clock === undefined || rule === undefined ? 0 : cycleUnits(clock.reading, rule),
          rule?.denominator ?? 1,
        ),
      };
    }
  }
}
