// The limits: manuals with their revisions, a calendar life, and the directive that lowers one.
import { calendarLife, loweringDirective, models, partsOf, STRONGER_SHAFT } from '../models.mjs';

/** The limits: what is in force, and the older revision of the one that was lowered. */
export function lifeLimits() {
  const rows = Object.entries(models).flatMap(([model, { ratings, manual }]) =>
    [
      ...partsOf(model),
      ...(model === 'R63'
        ? [{ partNumber: STRONGER_SHAFT, limits: { '63-1': 20000, '63-2': 17000 }, minutes: null }]
        : []),
    ].flatMap((part) =>
      ratings.map((rating) =>
        limitRow(
          model,
          rating,
          part,
          part.limits[rating],
          part.partNumber === 'K84-4113' ? [manual, '7', '2026-07-01'] : [manual, '6', '2023-04-01'],
        ),
      ),
    ),
  );
  const older = [
    ['84A', 12000],
    ['84B', 11000],
  ].map(([rating, cycles]) =>
    limitRow('K84', rating, { partNumber: 'K84-4113', minutes: null }, cycles, [
      models.K84.manual,
      '6',
      '2023-04-01',
    ]),
  );
  return [...older, ...rows];
}

function limitRow(model, rating, { partNumber, minutes }, cycles, [document, revision, effective]) {
  const authorisation = typeof cycles === 'number' ? 'limited' : (cycles ?? 'not-limited');
  const limited = authorisation === 'limited';
  return {
    part_number: partNumber,
    engine_model: model,
    rating,
    authorisation,
    cycles: limited ? cycles : '',
    minutes: limited ? (minutes ?? '') : '',
    months_from_new: limited && partNumber === calendarLife.partNumber ? calendarLife.months : '',
    document,
    revision,
    effective_on: effective,
  };
}

/** The directive that lowers a limit, as the loader accepts it once its preview was seen. */
export function limitDirective() {
  const { model, partNumber, limits, ...document } = loweringDirective;
  const rows = Object.entries(limits).map(([ratingCode, cycles]) => ({
    partNumber,
    engineModel: model,
    ratingCode,
    authorisation: 'limited',
    cycles,
  }));
  return { basis: 'directive', ...document, rows };
}
