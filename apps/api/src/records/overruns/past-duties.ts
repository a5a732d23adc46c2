import { fraction } from '@strutbook/domain/units/fraction.js';
import type { Tx } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';
import type { Standing } from '../requirements/standings.js';
import { type CounterSources, countersOfSubjects } from '../requirements/subject-counters.js';
import type { Subject } from '../requirements/subjects.js';
import { groupRows } from '../usage/group-rows.js';
import { type DoneDuty, mayBeLate } from './duty-candidates.js';

/** A time of a duty that has ended: it was done then, or what it is counted from began anew. */
export interface PastDuty {
  readonly subject: Subject;
  readonly code: string;
  readonly until: Date;
}

/** The times of duties that have ended and in which something may have flown beyond them. */
export async function pastDuties(
  tx: Tx,
  operatorId: number,
  standings: readonly Standing[],
  sources: CounterSources,
): Promise<PastDuty[]> {
  return [
    ...(await doneLate(tx, operatorId, standings, sources)),
    ...(await begunAnew(tx, operatorId, standings)),
  ];
}

async function doneLate(
  tx: Tx,
  operatorId: number,
  standings: readonly Standing[],
  sources: CounterSources,
): Promise<PastDuty[]> {
  const subjects = new Map(standings.map(({ subject }) => [subject.id, subject]));
  const rows = await accomplishmentsOf(tx, operatorId, [...subjects.keys()]);
  if (rows.length === 0) return [];
  const bySubject = groupRows(rows, (row) => row.subjectId);
  const counters = await countersOfSubjects(
    tx,
    operatorId,
    [...bySubject].flatMap(([id, own]) => {
      const subject = subjects.get(id);
      return subject === undefined ? [] : [{ subject, instants: own.map((row) => row.at) }];
    }),
    sources,
  );
  const revisions = groupRows(
    await tx.requirement.findMany({ where: { operatorId, voidedSeq: null } }),
    (row) => row.code,
  );
  const done = rows.map(({ minutes, cycles, cycleDenominator, doneOn, ...row }): DoneDuty => {
    const then = counters.get(row.subjectId)?.at(row.at) ?? { minutes: null, cycles: null };
    return {
      ...row,
      mark: {
        minutes: minutes === null ? then.minutes : Number(minutes),
        cycles: cycles === null ? then.cycles : fraction(cycles, BigInt(cycleDenominator)),
        on: dayToWire(doneOn),
      },
    };
  });
  const chains = groupRows(done, (row) => `${row.subjectId} ${row.code}`);
  return [...chains.values()].flatMap((chain) =>
    chain.flatMap((duty, index): PastDuty[] => {
      const subject = subjects.get(duty.subjectId);
      const isLate = mayBeLate(chain[index - 1] ?? null, duty, revisions.get(duty.code) ?? []);
      return subject !== undefined && isLate ? [{ subject, code: duty.code, until: duty.at }] : [];
    }),
  );
}

async function accomplishmentsOf(tx: Tx, operatorId: number, subjectIds: readonly string[]) {
  const ids = { in: [...subjectIds] };
  const rows = await tx.accomplishment.findMany({
    where: {
      ...{ operatorId, voidedSeq: null },
      OR: [{ componentId: ids }, { airframeId: ids }, { positionId: ids }],
    },
    include: { requirement: { select: { code: true } } },
    orderBy: [{ at: 'asc' }, { recordedSeq: 'asc' }],
  });
  return rows.map(({ requirement, componentId, positionId, airframeId, ...row }) => ({
    ...row,
    subjectId: componentId ?? positionId ?? airframeId ?? '',
    code: requirement.code,
  }));
}

/** What is counted from an overhaul or an installation ended to count where the next one began, or at the removal. */
async function begunAnew(tx: Tx, operatorId: number, standings: readonly Standing[]): Promise<PastDuty[]> {
  const fromOverhaul = standings.filter(({ requirement }) => requirement.countedFrom === 'overhaul');
  const fromInstallation = standings.filter(({ requirement }) => requirement.countedFrom === 'installation');
  const idsOf = (rows: readonly Standing[]) => rows.flatMap(({ subject }) => subject.componentId ?? []);
  const overhauls =
    fromOverhaul.length === 0
      ? []
      : await tx.reset.findMany({
          where: {
            ...{ operatorId, kind: 'overhaul', voidedSeq: null },
            componentId: { in: idsOf(fromOverhaul) },
          },
        });
  const removals =
    fromInstallation.length === 0
      ? []
      : await tx.stay.findMany({
          where: {
            ...{ operatorId, voidedSeq: null, slotId: { not: null }, toAt: { not: null } },
            OR: [
              { componentId: { in: idsOf(fromInstallation) } },
              {
                slot: {
                  is: {
                    operatorId,
                    positionId: { in: fromInstallation.flatMap(({ subject }) => subject.positionId ?? []) },
                  },
                },
              },
            ],
          },
          include: { slot: { select: { positionId: true } } },
        });
  return [
    ...fromOverhaul.flatMap(({ subject, requirement: { code } }) =>
      overhauls
        .filter((row) => row.componentId === subject.componentId)
        .map((row): PastDuty => ({ subject, code, until: row.at })),
    ),
    ...fromInstallation.flatMap(({ subject, requirement: { code } }) =>
      removals.flatMap(({ componentId, slot, toAt: until }): PastDuty[] => {
        const isItsOwn = componentId === subject.componentId || slot?.positionId === subject.positionId;
        return isItsOwn && until !== null ? [{ subject, code, until }] : [];
      }),
    ),
  ];
}
