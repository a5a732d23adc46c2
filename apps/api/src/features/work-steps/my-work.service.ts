import { Injectable } from '@nestjs/common';
import { countingSignatures, type StepFacts, standingOf } from '@strutbook/domain/work/step-standing.js';
import { type Actor, holdsOne } from '../../platform/access/actor.js';
import { SIGNING_ROLES } from '../../platform/access/roles.js';
import { Database } from '../../platform/database/database.js';
import { stepFacts } from '../../records/work/kept-step.js';
import type { PackageKind } from '../../records/work/package-head.js';
import { loadStepsOfPackages } from '../../records/work/step-records.js';
import type { MyWorkDto, WaitingStepDto } from './work.dto.js';

// Those opened last: more at once are not worked by one person.
const MOST_PACKAGES = 100;

/** The steps that wait for a person. */
@Injectable()
export class MyWorkService {
  constructor(private readonly database: Database) {}

  /** Steps of open packages that the person's roles let them do or inspect, by package, the newest first. */
  of(actor: Actor): Promise<MyWorkDto> {
    if (!holdsOne(actor, SIGNING_ROLES.done)) return Promise.resolve({ packages: [] });
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const open = await tx.workPackage.findMany({
        where: { operatorId, status: 'open', workStepByPackage: { some: {} } },
        select: { id: true, number: true, kind: true, title: true },
        orderBy: { id: 'desc' },
        take: MOST_PACKAGES,
      });
      const kept = await loadStepsOfPackages(
        tx,
        operatorId,
        open.map(({ id }) => id),
      );
      const packages = open.map(({ id, number, kind, title }) => {
        const all = kept.filter((step) => step.packageId === id).map(stepFacts);
        return { id, number, kind: kind as PackageKind, title, steps: waiting(all, actor) };
      });
      return { packages: packages.filter(({ steps }) => steps.length > 0) };
    });
  }
}

function waiting(all: readonly StepFacts[], actor: Actor): WaitingStepDto[] {
  return all.flatMap((step) => {
    const why = whyWaiting(step, all, actor);
    const { number, title } = step.definition;
    return why === null ? [] : [{ id: step.id, number, title, why }];
  });
}

function whyWaiting(step: StepFacts, all: readonly StepFacts[], actor: Actor): WaitingStepDto['why'] | null {
  switch (standingOf(step, all)) {
    case 'open':
    case 'changed':
      return 'to-do';
    case 'rejected':
      return 'rejected';
    case 'to-inspect': {
      const { done } = countingSignatures(step);
      return holdsOne(actor, SIGNING_ROLES.inspection) && done?.personId !== actor.personId
        ? 'to-inspect'
        : null;
    }
    default:
      return null;
  }
}
