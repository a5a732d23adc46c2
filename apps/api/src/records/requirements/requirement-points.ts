import { Injectable } from '@nestjs/common';
import type { DimensionDue } from '@strutbook/domain/due/dimension-due.js';
import { duePoint } from '@strutbook/domain/due/due-point.js';
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

  /** The due points of all requirements (or those of one code) for what a scope names, as the records say they are now. */
  async fromFacts(tx: Tx, operatorId: number, scope: Scope, code?: string): Promise<DuePointRow[]> {
    const standings = await this.standings.of(tx, operatorId, scope, code === undefined ? {} : { code });
    const components = standings.flatMap(({ subject }) => subject.componentId ?? []);
    const engineOf =
      components.length === 0
        ? new Map<string, string>()
        : await this.structure.engineOf(tx, operatorId, [...new Set(components)], null);
    return standings.flatMap((standing) => pointsOf(standing, engineOf.get(standing.subject.id) ?? null));
  }
}

function pointsOf(
  { requirement, subject, counters, due, reasons }: Standing,
  engineId: string | null,
): DuePointRow[] {
  if (due.kind !== 'open') return [];
  const base = {
    componentId: subject.componentId,
    airframeId: subject.airframeId,
    positionId: subject.positionId,
    engineId,
    carrierId: counters.clock?.carrierId ?? null,
    kind: 'requirement',
    requirementId: requirement.id,
    cycleRuleId: null,
    lifeLimitId: null,
    flagged: false,
  } as const;
  const known = due.dues.map((each) => ({ ...base, ...dueOf(each, counters) }));
  if (due.unknown.length === 0) return known;
  return [
    ...known,
    {
      ...base,
      verdict: 'not-verified',
      dimension: 'none',
      span: null,
      dueAt: null,
      dueOn: null,
      reason: reasons.join(' '),
    },
  ];
}

type InDimension = Pick<
  DuePointRow,
  'verdict' | 'dimension' | 'cycleRuleId' | 'span' | 'dueAt' | 'dueOn' | 'reason'
>;

function dueOf(
  { dimension, interval, remainingExact, dueOn }: DimensionDue,
  counters: SubjectCounters,
): InDimension {
  const due = { verdict: 'limited', span: interval, cycleRuleId: null, dueOn: null, reason: null } as const;
  const { clock, rule } = counters;
  switch (dimension) {
    case 'days':
    case 'months':
      return { ...due, dimension, dueAt: null, dueOn: dueOn === null ? null : dayFromWire(dueOn) };
    case 'minutes':
      return {
        ...due,
        dimension,
        dueAt: duePoint({ remainingExact, reading: clock?.reading.minutes ?? 0, denominator: 1 }),
      };
    case 'cycles': {
      // Off the wing it hangs on no clock: one that stands still at zero.
      const isByFlight = clock !== undefined && rule === POD_RULE;
      return {
        ...due,
        dimension: isByFlight ? 'flights' : dimension,
        cycleRuleId: rule === undefined || isByFlight ? null : rule.id,
        dueAt: duePoint({
          remainingExact,
          reading: clock === undefined || rule === undefined ? 0 : cycleUnits(clock.reading, rule),
          denominator: rule?.denominator ?? 1,
        }),
      };
    }
  }
}
