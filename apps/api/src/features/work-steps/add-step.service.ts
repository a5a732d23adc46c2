import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { createSteps } from '../../records/work/create-steps.js';
import { ADDED, ownDefinitions } from '../../records/work/own-steps.js';
import { lockPackageAlone, packageHead } from '../../records/work/package-head.js';
import { refuseUnsoundSteps } from '../../records/work/sound-content.js';
import { loadKeptSteps, stepIn } from '../../records/work/step-records.js';
import type { OwnStepDto } from '../../records/work/wire/own-step.dto.js';
import type { StepDto } from '../../records/work/wire/step.dto.js';
import { stepToWire } from '../../records/work/wire/step.mapper.js';

const MOST_STEPS = 400;

/** Steps that no procedure has, added to open packages. */
@Injectable()
export class AddStepService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
  ) {}

  /** Adds a step after all others. Refuses: NOT_FOUND, WRONG_STATE, INVALID_FIELDS, REFUSED_BY_FACTS. */
  add(actor: Actor, act: ActRequest, packageId: string, own: OwnStepDto): Promise<StepDto> {
    refuseUnsoundSteps([own]);
    if (own.moves != null)
      refuse({
        code: 'INVALID_FIELDS',
        fields: [
          {
            field: 'moves',
            reason: 'What a package moves is settled when it is opened.',
            fix: 'Leave it out.',
          },
        ],
      });
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      await lockPackageAlone(tx, operatorId, packageId);
      const head = await packageHead(tx, operatorId, packageId);
      const before = await loadKeptSteps(tx, operatorId, packageId);
      refuseForeign(before.length, head.number);
      const number = await this.journal.number(tx);
      const last = Math.max(0, ...before.map(({ definition }) => definition.number));
      const owned = before.filter(({ definition }) => definition.group === ADDED).length;
      const definitions = ownDefinitions([own], { number: last, own: owned });
      const [id] = await createSteps(tx, operatorId, { packageId, number, definitions });
      await tx.workPackage.update({
        where: { operatorId_id: { operatorId, id: packageId } },
        data: { version: { increment: 1 } },
        select: { id: true },
      });
      await this.journal.append(tx, actor, {
        number,
        stream: packageId,
        kind: 'step-added',
        body: plainJson({ packageId, packageNumber: head.number, stepId: id, definition: definitions[0] }),
        about: [packageId, id, head.airframe?.id, head.component?.id].filter((each) => each !== undefined),
        key: act.key,
      });
      const all = await loadKeptSteps(tx, operatorId, packageId);
      const body = stepToWire(stepIn(all, id ?? ''), all);
      return { status: 201, body, version: body.version, resource: `/api/steps/${body.id}`, number };
    });
  }
}

function refuseForeign(steps: number, number: string): void {
  if (steps === 0)
    refuse({
      code: 'REFUSED_BY_FACTS',
      reason: `Package ${number} was logged as one act and is not worked by steps.`,
      fix: 'Open a package for the further work.',
    });
  if (steps >= MOST_STEPS)
    refuse({
      code: 'REFUSED_BY_FACTS',
      reason: `Package ${number} has ${steps} steps; it takes no more.`,
      fix: 'Open a package for the further work.',
    });
}
