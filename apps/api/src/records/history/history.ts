import { Injectable } from '@nestjs/common';
import { compareFacts, NOTHING_KNOWN, nextLine } from '@strutbook/domain/history/assemble-history.js';
import type { Tx } from '../../platform/database/database.js';
import { acceptances, keepingFacts, openings } from './balances.js';
import { loadEntries } from './entries.js';
import { flightFacts } from './flight-facts.js';
import { airframeMoves, componentMoves } from './moves.js';
import { changeFacts, releaseFacts } from './package-facts.js';
import { shopFacts } from './shop-facts.js';
import { loadSubject } from './subject.js';
import { tell } from './tell.js';
import { type RecordedRow, type Tellable, tellable } from './tellable.js';
import type { ToldLine, ToldSubject, ToldTotals } from './told-line.js';
import { orderFacts, requirementFacts, workFacts } from './work-facts.js';

/** What a history is asked of. */
export interface HistoryAsk {
  readonly kind: 'airframe' | 'component';
  readonly id: string;
}

/** Everything that happened to an airframe or a component, in order, with totals and the entry behind each line. */
@Injectable()
export class History {
  /** What the history is about. Refuses: NOT_FOUND. */
  subject(tx: Tx, operatorId: number, ask: HistoryAsk): Promise<ToldSubject> {
    return loadSubject(tx, operatorId, ask);
  }

  /**
   * The lines, some hundred at a time, and at the end how many there were and the totals. In memory: all facts but the
   * flights, and a thousand flights. The same iterator makes the answer on the wire and the printed document.
   */
  async *tell(tx: Tx, operatorId: number, ask: HistoryAsk): AsyncGenerator<ToldLine[], ToldTotals> {
    const fewer = await fewFacts(tx, operatorId, ask);
    let totals = NOTHING_KNOWN;
    let lines = 0;
    let last: ToldLine['totals'] = { minutes: null, cycles: null };
    for await (const some of inOrder(fewer, flightFacts(tx, operatorId, ask))) {
      yield some.map((next) => {
        const { line, after } = nextLine(totals, next.fact);
        totals = after;
        last = line.totals;
        return tell(next, line);
      });
      lines += some.length;
    }
    return { lines, ...last };
  }
}

/** Every fact but the flights, in order. */
async function fewFacts(tx: Tx, operatorId: number, ask: HistoryAsk): Promise<Tellable[]> {
  const rows: RecordedRow[] = [
    ...(await openings(tx, operatorId, ask)),
    ...(await changeFacts(tx, operatorId, ask)),
    ...(await releaseFacts(tx, operatorId, ask)),
    ...(await workFacts(tx, operatorId, ask)),
    ...(await requirementFacts(tx, operatorId, ask)),
    ...(await shopFacts(tx, operatorId, ask)),
    ...(ask.kind === 'airframe'
      ? await airframeMoves(tx, operatorId, ask.id)
      : [...(await componentMoves(tx, operatorId, ask.id)), ...(await keepingFacts(tx, operatorId, ask.id))]),
  ];
  const accepted = ask.kind === 'component' ? await acceptances(tx, operatorId, ask.id) : [];
  const undated = [...accepted, ...(await orderFacts(tx, operatorId, ask))];
  const all = [...rows, ...undated];
  const first = await firstEntry(tx, operatorId, ask);
  const numbers = all.flatMap((row) => [row.recordedSeq, row.voidedSeq]).filter((number) => number != null);
  const entries = await loadEntries(tx, operatorId, [
    ...numbers,
    ...(first === null ? [] : [first.recordedSeq]),
  ]);
  const dated = [
    ...rows,
    ...undated.map((row): RecordedRow => ({ ...row, at: entries(row.recordedSeq).recordedAt })),
  ];
  const registered = first === null ? [] : [{ ...first, at: entries(first.recordedSeq).recordedAt }];
  return [...registered, ...dated]
    .map((row) => tellable(row, entries))
    .sort((a, b) => compareFacts(a.fact, b.fact));
}

/** When the subject itself was put on record: the first entry of its stream. */
async function firstEntry(
  tx: Tx,
  operatorId: number,
  ask: HistoryAsk,
): Promise<Omit<RecordedRow, 'at'> | null> {
  const entry = await tx.journalEntry.findFirst({
    where: { operatorId, stream: ask.id, seq: 1n },
    select: { number: true },
  });
  if (entry === null) return null;
  const subject = await loadSubject(tx, operatorId, ask);
  return {
    id: ask.id,
    recordedSeq: entry.number,
    title: 'Put on record',
    detail: subject.identity.map(({ name, value }) => `${name}: ${value}`).join('; '),
    event: { kind: 'registered', serial: subject.label, partNumber: null },
  };
}

/** Two runs of facts, each in order, as one. */
async function* inOrder(
  few: readonly Tellable[],
  flights: AsyncGenerator<Tellable[]>,
): AsyncGenerator<Tellable[]> {
  let taken = 0;
  for await (const some of flights) {
    const merged: Tellable[] = [];
    for (const flight of some) {
      for (
        let next = few[taken];
        next !== undefined && compareFacts(next.fact, flight.fact) < 0;
        next = few[taken]
      ) {
        taken += 1;
        merged.push(next);
      }
      merged.push(flight);
    }
    yield merged;
  }
  yield few.slice(taken);
}
