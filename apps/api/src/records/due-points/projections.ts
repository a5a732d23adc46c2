import { Injectable } from '@nestjs/common';
import type { Tx } from '../../platform/database/database.js';
import { airframesEverHungOn } from '../requirements/requirement-scope.js';
import { Exposures } from '../usage/exposures.js';
import { everOnAirframes } from '../usage/kinship.js';
import { DuePoints } from './due-points.js';

/** Exposures and due points together, written again for what an act touches. */
@Injectable()
export class Projections {
  constructor(
    private readonly exposures: Exposures,
    private readonly duePoints: DuePoints,
  ) {}

  /** After a change of stays, ratings or rules of these components: they, and all that ever hung beneath them. */
  async ofComponents(tx: Tx, operatorId: number, componentIds: readonly string[]): Promise<void> {
    if (componentIds.length === 0) return;
    const touched = await this.exposures.rebuild(tx, operatorId, componentIds);
    // What is counted from an installation at a position moves with what hangs there.
    const airframeIds = await airframesEverHungOn(tx, operatorId, componentIds);
    await this.duePoints.rebuild(tx, operatorId, touched, airframeIds);
  }

  /** After a late, voided or corrected flight, whose amounts the exposures carry already: the due points of all that ever ran on these airframes, and of themselves. */
  async dueOnAirframes(tx: Tx, operatorId: number, airframeIds: readonly string[]): Promise<void> {
    await this.duePoints.rebuild(
      tx,
      operatorId,
      await everOnAirframes(tx, operatorId, airframeIds),
      airframeIds,
    );
  }

  /** After an import, which sets months and heads at once: exposures and due points of all that ever ran there. */
  async onAirframes(tx: Tx, operatorId: number, airframeIds: readonly string[]): Promise<void> {
    const touched = await this.exposures.rebuild(
      tx,
      operatorId,
      await everOnAirframes(tx, operatorId, airframeIds),
    );
    await this.duePoints.rebuild(tx, operatorId, touched, airframeIds);
  }
}
