import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { toCycles } from '../../platform/http/counters.dto.js';
import { dayOf } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import { type RecordedLimit, recordedLimit } from '../../records/lives/life-limits.js';
import type { RatingCodes } from '../../records/lives/life-words.js';
import { Lives, type PartInLife } from '../../records/lives/lives.js';
import type { AcceptLimitsDto, LimitRevisionDto } from './life-limit.dto.js';
import { byEffect, effectOf, sideOf } from './limit-change.js';
import type { AcceptedLimitsDto, LimitChangeDto, LimitPreviewDto } from './limit-preview.dto.js';
import { type FoundRow, findRows, readLimits, recordRows } from './limit-rows.js';
import { refuseUnfit } from './limit-rules.js';
import { LimitsInEffect } from './limits-in-effect.js';

interface Carried {
  readonly id: string;
  readonly partNumber: string;
  readonly serialNumber: string;
  readonly description: string;
  readonly registration: string | null;
  readonly positionNumber: number | null;
}

const placeOf = (index: number): string => `rows[${index}].`;

/** Revisions of limits, many rows at once: what they would change is seen before they are accepted. */
@Injectable()
export class LimitRevisionsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly lives: Lives,
    private readonly effect: LimitsInEffect,
    private readonly clock: Clock,
  ) {}

  /** What a revision would change, nothing stored. Refuses: NOT_FOUND, ALREADY_EXISTS, INVALID_FIELDS. */
  preview(actor: Actor, asked: LimitRevisionDto): Promise<LimitPreviewDto> {
    refuseUnfit(asked.basis, asked.rows, placeOf);
    return this.database.inOperator(actor, async (tx) => {
      const rows = await findRows(tx, actor.operatorId, asked, { lock: false, placeOf });
      return this.changedBy(tx, actor.operatorId, asked, rows);
    });
  }

  /** Accepts a revision as it was seen, in one act. Refuses: as the preview; CHECK_CHANGED when that is no longer so. */
  accept(actor: Actor, act: ActRequest, asked: AcceptLimitsDto): Promise<AcceptedLimitsDto> {
    const { operatorId } = actor;
    const { basis, document, revision, effectiveOn, digest } = asked;
    refuseUnfit(basis, asked.rows, placeOf);
    return this.acts.perform(actor, act, async (tx) => {
      const from = { basis, document, revision, effectiveOn };
      const rows = await findRows(tx, operatorId, asked, { lock: true, placeOf });
      const seen = await this.changedBy(tx, operatorId, asked, rows);
      if (seen.digest !== digest)
        refuse({ code: 'CHECK_CHANGED', what: 'what this revision changes', seen: digest, now: seen.digest });
      const number = await this.journal.number(tx);
      await recordRows(tx, operatorId, rows, { ...from, number });
      await this.effect.changed(tx, actor, {
        partNumbers: rows.map((row) => row.partNumber),
        effectiveOn,
      });
      const modelIds = [...new Set(rows.map((row) => row.engineModelId))];
      const [stream] = modelIds;
      if (stream === undefined) throw new Error('a revision without a row');
      await this.journal.append(tx, actor, {
        number,
        stream,
        kind: 'life-limits-accepted',
        body: {
          ...from,
          rows: rows.map((row) => ({ ...row })),
          changes: seen.changes.map(({ componentId, effect }) => ({ componentId, effect })),
          digest,
        },
        about: [
          ...modelIds,
          ...rows.map((row) => row.id),
          ...seen.changes.map((change) => change.componentId),
        ],
        key: act.key,
      });
      const limits = await readLimits(
        tx,
        operatorId,
        rows.map((row) => row.id),
        this.clock.now(),
      );
      const body = { limits, changes: seen.changes };
      return { status: 201, body, number, resource: `/api/life-limits?engineModelId=${stream}` };
    });
  }

  private async changedBy(
    tx: Tx,
    operatorId: number,
    asked: LimitRevisionDto,
    rows: readonly FoundRow[],
  ): Promise<LimitPreviewDto> {
    const now = this.clock.now();
    const begins = dayOf(asked.effectiveOn);
    const carried = await inService(
      tx,
      operatorId,
      rows.map((row) => row.partNumber),
    );
    const ids = carried.map((part) => part.id);
    const before = await this.lives.of(tx, operatorId, ids, null);
    const after = await this.lives.of(tx, operatorId, ids, null, {
      proposed: rows.map((row, index) => proposed(row, asked, index)),
      inForceAt: begins > now ? begins : now,
    });
    const ratings: RatingCodes = new Map(
      (await tx.rating.findMany({ where: { operatorId } })).map(({ id, code }) => [id, code]),
    );
    const engines = await serialsOf(tx, operatorId, [...after.values()]);
    const changes = carried
      .flatMap((part) => changeOf(part, { before, after, ratings, engines }))
      .sort(byEffect);
    const held = new Set(carried.map((part) => part.partNumber));
    const { basis, document, revision, effectiveOn } = asked;
    const looked = {
      basis,
      document,
      revision,
      effectiveOn,
      rows: rows.map(({ id: _id, ...row }) => row),
      changes,
    };
    return {
      digest: createHash('sha256').update(JSON.stringify(looked)).digest('hex'),
      effectiveOn,
      later: begins > now,
      looked: carried.length,
      partNumbersNotHeld: [...new Set(rows.map((row) => row.partNumber))].filter((each) => !held.has(each)),
      changes,
    };
  }
}

/** A row as if it were recorded, last of all. */
function proposed(row: FoundRow, from: LimitRevisionDto, index: number): RecordedLimit {
  return recordedLimit({
    ...row,
    id: `row ${index}`,
    modelId: row.engineModelId,
    basis: from.basis,
    document: from.document,
    revision: from.revision,
    effectiveOn: dayOf(from.effectiveOn).getTime() / 60_000,
    recorded: Number.MAX_SAFE_INTEGER,
  });
}

/** The limited parts with these numbers that are not scrapped or gone, with the position they are at. */
function inService(tx: Tx, operatorId: number, partNumbers: readonly string[]): Promise<Carried[]> {
  return tx.$queryRaw<Carried[]>`
    SELECT k.id, k.part_number AS "partNumber", k.serial_number AS "serialNumber", k.description,
           a.registration, p.number AS "positionNumber"
      FROM component k
      LEFT JOIN stay st ON st.operator_id = k.operator_id AND st.component_id = k.id AND st.voided_seq IS NULL AND st.to_at IS NULL
      LEFT JOIN location l ON l.operator_id = st.operator_id AND l.id = st.location_id
      LEFT JOIN LATERAL (
        SELECT c.airframe_id, c.position_id FROM exposure x
          JOIN carrier c ON c.operator_id = x.operator_id AND c.id = x.carrier_id
         WHERE x.operator_id = k.operator_id AND x.component_id = k.id AND x.to_at IS NULL LIMIT 1) AS c ON true
      LEFT JOIN airframe a ON a.operator_id = k.operator_id AND a.id = c.airframe_id
      LEFT JOIN position p ON p.operator_id = k.operator_id AND p.id = c.position_id
     WHERE k.operator_id = ${operatorId}::int AND k.life_limited AND k.part_number = ANY (${[...new Set(partNumbers)]}::text[])
       AND coalesce(l.kind, '') NOT IN ('scrapped', 'transferred-out')
     ORDER BY k.part_number, k.serial_number, k.id`;
}

async function serialsOf(
  tx: Tx,
  operatorId: number,
  parts: readonly PartInLife[],
): Promise<ReadonlyMap<string, string>> {
  const ids = [...new Set(parts.flatMap(({ engineId }) => engineId ?? []))];
  const rows = await tx.component.findMany({
    where: { operatorId, id: { in: ids } },
    select: { id: true, serialNumber: true },
  });
  return new Map(rows.map((row) => [row.id, row.serialNumber]));
}

function changeOf(
  part: Carried,
  found: {
    readonly before: ReadonlyMap<string, PartInLife>;
    readonly after: ReadonlyMap<string, PartInLife>;
    readonly ratings: RatingCodes;
    readonly engines: ReadonlyMap<string, string>;
  },
): LimitChangeDto[] {
  const [was, will] = [found.before.get(part.id), found.after.get(part.id)];
  if (was === undefined || will === undefined) return [];
  const [before, after] = [sideOf(was, found.ratings), sideOf(will, found.ratings)];
  const effect = effectOf(before, after);
  if (effect === null) return [];
  const { engineId, ratingId } = will;
  const used = will.life.kind === 'limited' ? will.life : null;
  return [
    {
      componentId: part.id,
      partNumber: part.partNumber,
      serialNumber: part.serialNumber,
      description: part.description,
      engineId,
      engineSerial: engineId === null ? null : (found.engines.get(engineId) ?? null),
      airframe: part.registration,
      positionNumber: part.positionNumber,
      ratingCode: ratingId === null ? null : (found.ratings.get(ratingId) ?? null),
      cyclesUsed: used?.cyclesUsed == null ? null : toCycles(used.cyclesUsed),
      minutesUsed: used?.minutesUsed ?? null,
      before,
      after,
      effect,
    },
  ];
}
