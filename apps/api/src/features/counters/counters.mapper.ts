import { toCounters, toCycles } from '../../platform/http/counters.dto.js';
import { toWire } from '../../platform/http/instants.js';
import type { Addend, ExplainedCounter, ResetBehind, ToldAt } from '../../records/explanations/explained.js';
import { precisionOf } from '../../records/stays/precision.js';
import type {
  CounterAddendDto,
  CounterResetDto,
  ExplainedCounterDto,
  ToldMomentDto,
} from './counters-view.dto.js';

/** A moment as the wire has it. Total. */
export function momentToWire({ at, kind, text }: ToldAt): ToldMomentDto {
  return { at: toWire(at), kind: kind as ToldMomentDto['kind'], precision: precisionOf(kind), text };
}

function resetToWire(reset: ResetBehind): CounterResetDto {
  const { kindOfReset: kind, id, evidence } = reset;
  return { kind, id, moment: momentToWire(reset), evidence };
}

/** A counter with its sum as the wire has it. Total. */
export function explainedToWire({ basis, total, reset, addends }: ExplainedCounter): ExplainedCounterDto {
  return {
    basis,
    total: toCounters(total),
    reset: reset === null ? null : resetToWire(reset),
    addends: addends.map(addendToWire),
  };
}

function addendToWire(addend: Addend): CounterAddendDto {
  const base: CounterAddendDto = {
    kind: addend.kind,
    id: null,
    minutes: addend.minutes,
    cycles: addend.cycles === null ? null : toCycles(addend.cycles),
    running: toCounters(addend.running),
    ...{ from: null, to: null, moment: null, ratingCode: null, carrier: null, carriedBy: null },
    ...{ rule: null, counts: null, exceptions: [], source: null, trace: null, note: null, acceptedBy: null },
  };
  switch (addend.kind) {
    case 'opening':
      return {
        ...base,
        id: addend.id,
        moment: momentToWire(addend.told),
        ratingCode: addend.ratingCode,
        source: addend.source,
        trace: addend.trace as CounterAddendDto['trace'],
        note: addend.traceNote,
      };
    case 'gap':
      return {
        ...base,
        id: addend.id,
        from: addend.from.getTime() === 0 ? null : toWire(addend.from),
        to: toWire(addend.to),
        note: addend.note,
        source: addend.accepted?.reference ?? null,
        acceptedBy: addend.accepted?.by ?? null,
      };
    case 'unknown':
      return { ...base, note: addend.reason };
    case 'exposure':
      return {
        ...base,
        from: toWire(addend.from),
        to: addend.to === null ? null : toWire(addend.to),
        ratingCode: addend.ratingCode,
        carrier: { ...addend.carrier },
        carriedBy: addend.engine,
        rule: addend.rule === null ? null : ruleToWire(addend.rule),
        counts: addend.counts,
        exceptions: addend.exceptions.map(({ flightId, logPage, landingAt, kind, missed }) => ({
          ...{ flightId, logPage, landingAt: toWire(landingAt), kind, missed },
        })),
      };
  }
}

function ruleToWire({ id: _, ...rule }: NonNullable<Extract<Addend, { kind: 'exposure' }>['rule']>) {
  return rule;
}
