import { Injectable } from '@nestjs/common';
import type { Tx } from '../../platform/database/database.js';
import { Clock } from '../../platform/time/clock.js';
import { Standings } from '../requirements/standings.js';
import type { Scope } from '../requirements/subjects.js';
import { Counters } from '../usage/counters.js';
import { Use } from '../usage/use.js';
import { overrunsOfDuties } from './duty-overruns.js';
import { withFlights } from './flights-over.js';
import { overrunsOfLives } from './life-history.js';
import type { PastOverrun } from './past-overrun.js';

/** Spans flown over a limit or a duty that stood then, computed from the facts: they go only where the facts do. */
@Injectable()
export class Overruns {
  constructor(
    private readonly use: Use,
    private readonly counters: Counters,
    private readonly standings: Standings,
    private readonly clock: Clock,
  ) {}

  /** Those of these components, and of these airframes and their positions, the latest first. */
  async of(tx: Tx, operatorId: number, scope: Scope): Promise<PastOverrun[]> {
    const { use, counters, standings } = this;
    const now = this.clock.now();
    const found = [
      ...(await overrunsOfLives(tx, operatorId, scope.componentIds, { use, now })),
      ...(await overrunsOfDuties(tx, operatorId, scope, {
        ...{ use, counters, standings },
        ...{ at: null, now },
      })),
    ];
    const told = await withFlights(tx, operatorId, found);
    return told.sort((a, b) => b.first.landingAt.getTime() - a.first.landingAt.getTime());
  }
}

/** What tells one overrun from another: a span that grew by an act is another one. Total. */
export function keyOfOverrun({ limit, dimension, first, last, by, ...of }: PastOverrun): string {
  return [
    of.componentId ?? of.positionId ?? of.airframeId,
    ...[limit.id, limit.requirement, dimension, first.logPage, first.airframeId, last.logPage, by],
  ].join(' ');
}
