import { Injectable } from '@nestjs/common';
import type { Tx } from '../../platform/database/database.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { DuePoints } from '../../records/due-points/due-points.js';
import type { RequirementSubject } from '../../records/requirements/requirement-status.js';
import { type Standing, Standings } from '../../records/requirements/standings.js';
import { lockForStays } from '../../records/stays/stay-facts.js';

/** What a fact about a requirement is about, locked. */
export interface Held extends RequirementSubject {
  /** The airframe whose head its due points hang on; null for a component. */
  readonly onAirframeId: string | null;
}

/** What facts about requirements are recorded on: its locks, what is due there, and its due points. */
@Injectable()
export class HeldSubjects {
  constructor(
    private readonly standings: Standings,
    private readonly duePoints: DuePoints,
  ) {}

  /** Locks what it is recorded on, so that of two at once the second sees the first. Refuses: NOT_FOUND. */
  async lock(tx: Tx, operatorId: number, subject: RequirementSubject): Promise<Held> {
    const { airframeId, positionId, componentId } = subject;
    const byId = (id: string) => ({ where: { operatorId_id: { operatorId, id } } });
    if (componentId !== null)
      orNotFound(
        await tx.component.findUnique({ ...byId(componentId), select: { id: true } }),
        'component',
        'componentId',
      );
    if (airframeId !== null)
      orNotFound(
        await tx.airframe.findUnique({ ...byId(airframeId), select: { id: true } }),
        'airframe',
        'airframeId',
      );
    const position =
      positionId === null
        ? null
        : orNotFound(
            await tx.position.findUnique({ ...byId(positionId), select: { airframeId: true } }),
            'position',
            'positionId',
          );
    const onAirframeId = airframeId ?? position?.airframeId ?? null;
    await lockForStays(tx, operatorId, {
      airframeIds: onAirframeId === null ? [] : [onAirframeId],
      componentIds: componentId === null ? [] : [componentId],
    });
    return { ...subject, onAirframeId };
  }

  /** What is due by the requirement in force with a code on what is held. Refuses: REFUSED_BY_FACTS (it is not for it). */
  async standingOf(tx: Tx, operatorId: number, held: Held, code: string): Promise<Standing> {
    const scope = {
      airframeIds: held.onAirframeId === null ? [] : [held.onAirframeId],
      componentIds: held.componentId === null ? [] : [held.componentId],
    };
    // One that does not apply by its state is told too: what was done is recorded all the same.
    const found = (await this.standings.of(tx, operatorId, scope, { codes: [code], withAll: true })).find(
      ({ subject, isForSubject }) =>
        isForSubject &&
        subject.airframeId === held.airframeId &&
        subject.positionId === held.positionId &&
        subject.componentId === held.componentId,
    );
    return (
      found ??
      refuse({
        code: 'REFUSED_BY_FACTS',
        field: 'requirementId',
        reason: 'This requirement is not in force, or not for what is named.',
        fix: 'Choose one that the airframe or the component lists under Requirements.',
      })
    );
  }

  /** Computes again what is due on it. */
  dueAgain(tx: Tx, operatorId: number, { componentId, onAirframeId }: Held): Promise<void> {
    return this.duePoints.rebuild(
      tx,
      operatorId,
      componentId === null ? [] : [componentId],
      onAirframeId === null ? [] : [onAirframeId],
    );
  }
}

/** The stream of the journal that a fact about it is written to. Total. */
export function streamOf({ componentId, onAirframeId }: Held): string {
  return componentId ?? onAirframeId ?? '';
}
