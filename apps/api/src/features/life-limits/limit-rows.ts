import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { dayOf } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import type { LifeLimitDto, LimitRevisionDto, LimitRowDto } from './life-limit.dto.js';
import { lifeLimitToWire } from './life-limit.mapper.js';
import { standingsOf } from './limit-standing.js';

/** The names told with a limit. */
export const WITH_NAMES = {
  rating: { select: { code: true } },
  engineModel: { select: { maker: true, designation: true } },
} as const;

/** A row with what it names found. */
export interface FoundRow {
  readonly id: string;
  readonly partNumber: string;
  readonly engineModelId: string;
  readonly model: string;
  readonly ratingId: string | null;
  readonly ratingCode: string | null;
  readonly authorisation: LimitRowDto['authorisation'];
  readonly cycles: number | null;
  readonly minutes: number | null;
  readonly calendarSpan: number | null;
  readonly calendarUnit: string | null;
  readonly calendarFrom: string | null;
  readonly monthRule: string | null;
}

/** The document of some rows. */
export type LimitDocument = Pick<LimitRevisionDto, 'basis' | 'document' | 'revision' | 'effectiveOn'>;

/**
 * The rows with their models and ratings; `lock` holds the models, for two rows of one revision at once would miss each
 * other in the check for the same one. Refuses: NOT_FOUND, ALREADY_EXISTS, about `placeOf` the row.
 */
export async function findRows(
  tx: Tx,
  operatorId: number,
  { document, revision, rows }: LimitDocument & { readonly rows: readonly LimitRowDto[] },
  { lock, placeOf }: { readonly lock: boolean; readonly placeOf: (index: number) => string },
): Promise<FoundRow[]> {
  const modelIds = [...new Set(rows.map((row) => row.engineModelId))].sort();
  if (lock)
    await tx.$queryRaw`SELECT id FROM engine_model WHERE operator_id = ${operatorId}::int
      AND id = ANY (${modelIds}::uuid[]) ORDER BY id FOR NO KEY UPDATE`;
  const models = await tx.engineModel.findMany({
    where: { operatorId, id: { in: modelIds } },
    include: { ratingByEngineModel: true },
  });
  const same = await tx.lifeLimit.findMany({
    where: { operatorId, document, revision, voidedSeq: null, engineModelId: { in: modelIds } },
    select: { partNumber: true, engineModelId: true, ratingId: true },
  });
  return rows.map((row, index) => {
    const place = placeOf(index);
    const model = orNotFound(
      models.find((each) => each.id === row.engineModelId),
      'engine model',
      `${place}engineModelId`,
    );
    const ratingId =
      row.ratingCode == null
        ? null
        : orNotFound(
            model.ratingByEngineModel.find((each) => each.code === row.ratingCode),
            'rating of this model',
            `${place}ratingCode`,
          ).id;
    const known = same.some(
      (each) =>
        each.partNumber === row.partNumber && each.engineModelId === model.id && each.ratingId === ratingId,
    );
    if (known)
      refuse({
        code: 'ALREADY_EXISTS',
        what: `a limit of ${row.partNumber} at this rating in ${document}, revision`,
        field: place === '' ? 'revision' : `${place}partNumber`,
        value: revision,
      });
    return foundRow(row, { modelId: model.id, model: model.designation, ratingId });
  });
}

function foundRow(
  row: LimitRowDto,
  named: { readonly modelId: string; readonly model: string; readonly ratingId: string | null },
): FoundRow {
  const calendar = row.calendarSpan ?? null;
  return {
    id: newId(),
    partNumber: row.partNumber,
    engineModelId: named.modelId,
    model: named.model,
    ratingId: named.ratingId,
    ratingCode: row.ratingCode ?? null,
    authorisation: row.authorisation,
    cycles: row.cycles ?? null,
    minutes: row.minutes ?? null,
    calendarSpan: calendar,
    calendarUnit: calendar === null ? null : (row.calendarUnit ?? null),
    calendarFrom: calendar === null ? null : (row.calendarFrom ?? null),
    monthRule: calendar === null ? null : (row.monthRule ?? 'same-day'),
  };
}

/** Records the rows under a journal number. */
export async function recordRows(
  tx: Tx,
  operatorId: number,
  rows: readonly FoundRow[],
  { basis, document, revision, effectiveOn, number }: LimitDocument & { readonly number: bigint },
): Promise<void> {
  await tx.lifeLimit.createMany({
    data: rows.map(({ model: _model, ratingCode: _code, ...row }) => ({
      operatorId,
      ...row,
      basis,
      document,
      revision,
      effectiveOn: dayOf(effectiveOn),
      recordedSeq: number,
    })),
  });
}

/** The components with these part numbers. */
export async function withPartNumbers(
  tx: Tx,
  operatorId: number,
  partNumbers: readonly string[],
): Promise<string[]> {
  const rows = await tx.component.findMany({
    where: { operatorId, partNumber: { in: [...new Set(partNumbers)] } },
    select: { id: true },
  });
  return rows.map((row) => row.id);
}

/** The limits with these ids, as the wire has them, in their order. */
export async function readLimits(
  tx: Tx,
  operatorId: number,
  ids: readonly string[],
  now: Date,
): Promise<LifeLimitDto[]> {
  const rows = await tx.lifeLimit.findMany({
    where: { operatorId, id: { in: [...ids] } },
    include: WITH_NAMES,
  });
  const byId = new Map(rows.map((row) => [row.id, row]));
  const standing = await standingsOf(
    tx,
    operatorId,
    rows.map((row) => row.partNumber),
    now,
  );
  return ids.map((id) => lifeLimitToWire(orNotFound(byId.get(id), 'life limit'), standing));
}
