import { add, compare, type Fraction, fraction, ZERO } from '@strutbook/domain/units/fraction.js';
import type { Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { lockForStays } from '../../records/stays/stay-facts.js';
import { refuseBeforeManufacture } from './moment.js';
import type { NewOpeningDto } from './opening.dto.js';

/** What an opening balance is of: one of the two. */
export interface Subject {
  readonly componentId: string | null;
  readonly airframeId: string | null;
}

interface Planned {
  readonly subject: Subject;
  readonly at: Date;
  readonly asked: NewOpeningDto;
}

const BASIS_WORDS = {
  new: 'since new',
  overhaul: 'since overhaul',
  'shop-visit': 'since shop visit',
  repair: 'since repair',
} as const;

/** Locks what the opening is of, so that of two at once the second sees the first. Refuses: NOT_FOUND. */
export async function lockSubject(
  tx: Tx,
  operatorId: number,
  { componentId, airframeId }: Subject,
): Promise<void> {
  const locks = {
    airframeIds: airframeId === null ? [] : [airframeId],
    componentIds: componentId === null ? [] : [componentId],
  };
  await lockForStays(tx, operatorId, locks);
  const where = (id: string) => ({ where: { operatorId_id: { operatorId, id } }, select: { id: true } });
  if (airframeId !== null)
    orNotFound(await tx.airframe.findUnique(where(airframeId)), 'airframe', 'airframeId');
  if (componentId !== null)
    orNotFound(await tx.component.findUnique(where(componentId)), 'component', 'componentId');
}

/** Refuses an opening balance that what is recorded contradicts. */
export async function refuseOpening(tx: Tx, operatorId: number, planned: Planned): Promise<void> {
  const { subject, at } = planned;
  if (subject.componentId !== null) {
    await refuseBeforeManufacture(tx, operatorId, subject.componentId, at);
    await refuseEarlierStay(tx, operatorId, subject.componentId, at);
  }
  if (subject.airframeId !== null) await refuseEarlierFlight(tx, operatorId, subject.airframeId, at);
  await refuseBesideOthers(tx, operatorId, planned);
}

async function refuseEarlierStay(tx: Tx, operatorId: number, componentId: string, at: Date): Promise<void> {
  const stay = await tx.stay.findFirst({
    where: { operatorId, componentId, voidedSeq: null, fromAt: { lt: at } },
    orderBy: { fromAt: 'asc' },
    include: {
      location: true,
      slot: { include: { component: true, position: { include: { airframe: true } } } },
    },
  });
  if (stay === null) return;
  const { slot, location } = stay;
  const place =
    location?.name ??
    (slot?.position == null
      ? `${slot?.name ?? ''} of ${slot?.component?.serialNumber ?? ''}`
      : `${slot.position.airframe.registration}, ${slot.position.label}`);
  refuse({
    code: 'REFUSED_BY_FACTS',
    field: 'at',
    reason: `The component is on record at ${place} from ${toWire(stay.fromAt)}; a balance at ${toWire(at)} would hold that already.`,
    fix: `Enter the balance as it was at ${toWire(stay.fromAt)} or before, or void that stay first.`,
  });
}

async function refuseEarlierFlight(tx: Tx, operatorId: number, airframeId: string, at: Date): Promise<void> {
  const flight = await tx.flight.findFirst({
    where: { operatorId, airframeId, voidedSeq: null, takeOffAt: { lt: at } },
    orderBy: { takeOffAt: 'asc' },
  });
  if (flight === null) return;
  refuse({
    code: 'REFUSED_BY_FACTS',
    field: 'at',
    reason: `The flight of log page ${flight.logPage} took off at ${toWire(flight.takeOffAt)}; a balance at ${toWire(at)} would hold it already.`,
    fix: `Enter the balance as it was at ${toWire(flight.takeOffAt)} or before, or void the flights before it first.`,
  });
}

async function refuseBesideOthers(
  tx: Tx,
  operatorId: number,
  { subject, at, asked }: Planned,
): Promise<void> {
  const others = await tx.opening.findMany({ where: { operatorId, ...subject, voidedSeq: null } });
  const same = others.find((row) => row.basis === asked.basis);
  if (same !== undefined) {
    const what = `an opening balance ${BASIS_WORDS[asked.basis]} at ${toWire(same.at)} (${same.source}); it must be voided first`;
    refuse({ code: 'ALREADY_EXISTS', what, field: 'basis' });
  }
  const elsewhen = others.find((row) => row.at.getTime() !== at.getTime());
  if (elsewhen !== undefined) {
    const reason = `The other opening balance of it holds at ${toWire(elsewhen.at)}.`;
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'at',
      reason,
      fix: 'Enter both as they were at the same instant.',
    });
  }
  const [own, sinceNew] = [
    totalOf(asked.rows.map(withDenominator)),
    totalOf(others.filter((row) => row.basis === 'new')),
  ];
  const beyond =
    asked.basis === 'new'
      ? others.some((row) => exceeds(totalOf(others.filter(({ basis }) => basis === row.basis)), own))
      : exceeds(own, sinceNew);
  if (beyond) {
    const reason = 'More would be counted since an overhaul, shop visit or repair than since new.';
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'rows',
      reason,
      fix: 'Compare both with the records they come from.',
    });
  }
}

interface Amounts {
  readonly minutes: bigint | number | null;
  readonly cycles: bigint | number | null;
  readonly cycleDenominator: number;
}

function withDenominator({ minutes, cycles, cycleDenominator }: NewOpeningDto['rows'][number]): Amounts {
  return { minutes: minutes ?? null, cycles: cycles ?? null, cycleDenominator: cycleDenominator ?? 1 };
}

interface Total {
  readonly minutes: Fraction | null;
  readonly cycles: Fraction | null;
}

function totalOf(rows: readonly Amounts[]): Total | null {
  if (rows.length === 0) return null;
  const sum = (amount: (row: Amounts) => Fraction | null) =>
    rows.reduce<Fraction | null>((total, row) => {
      const part = amount(row);
      return total === null || part === null ? null : add(total, part);
    }, ZERO);
  return {
    minutes: sum((row) => (row.minutes === null ? null : fraction(row.minutes))),
    cycles: sum((row) => (row.cycles === null ? null : fraction(row.cycles, row.cycleDenominator))),
  };
}

function exceeds(part: Total | null, whole: Total | null): boolean {
  if (part === null || whole === null) return false;
  const more = (a: Fraction | null, b: Fraction | null) => a !== null && b !== null && compare(a, b) > 0;
  return more(part.minutes, whole.minutes) || more(part.cycles, whole.cycles);
}

/** The rating of each row, by its code in the model of the component or of the engine it is in. Refuses: NOT_FOUND. */
export async function openingRatings(
  tx: Tx,
  operatorId: number,
  { subject: { componentId }, asked }: Pick<Planned, 'subject' | 'asked'>,
): Promise<(string | null)[]> {
  if (componentId === null || asked.rows.every((row) => row.ratingCode == null))
    return asked.rows.map(() => null);
  const engineModelId = asked.engineModelId ?? (await modelOf(tx, operatorId, componentId));
  if (engineModelId === null) {
    const reason = 'The component is recorded for no engine model, so its ratings are not known.';
    refuse({
      code: 'INVALID_FIELDS',
      fields: [{ field: 'engineModelId', reason, fix: 'Name the model whose ratings are meant.' }],
    });
  }
  const ratings = await tx.rating.findMany({ where: { operatorId, engineModelId } });
  return asked.rows.map(({ ratingCode }, index) =>
    ratingCode == null
      ? null
      : orNotFound(
          ratings.find(({ code }) => code === ratingCode),
          'rating of this model',
          `rows[${index}].ratingCode`,
        ).id,
  );
}

async function modelOf(tx: Tx, operatorId: number, componentId: string): Promise<string | null> {
  const rows = await tx.$queryRaw<{ modelId: string | null }[]>`
    WITH RECURSIVE up AS (
      SELECT c.id, c.engine_model_id, 1 AS depth FROM component c WHERE c.operator_id = ${operatorId}::int AND c.id = ${componentId}::uuid
      UNION ALL
      SELECT c.id, c.engine_model_id, u.depth + 1 FROM up u
        JOIN stay st ON st.operator_id = ${operatorId}::int AND st.component_id = u.id AND st.voided_seq IS NULL AND st.to_at IS NULL
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
        JOIN component c ON c.operator_id = s.operator_id AND c.id = s.component_id
    ) SELECT engine_model_id AS "modelId" FROM up WHERE engine_model_id IS NOT NULL ORDER BY depth LIMIT 1`;
  return rows[0]?.modelId ?? null;
}
