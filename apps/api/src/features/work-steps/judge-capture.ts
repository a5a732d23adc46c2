import { Injectable } from '@nestjs/common';
import { dateOf } from '@strutbook/domain/units/calendar.js';
import type { Capture } from '@strutbook/domain/work/capture.js';
import type { Judgement, Typed } from '@strutbook/domain/work/entry.js';
import { judgeEntry } from '@strutbook/domain/work/judge-entry.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { Clock } from '../../platform/time/clock.js';
import { ToolRecords } from '../../records/tools/tool-records.js';
import { stepFacts } from '../../records/work/kept-step.js';
import { orderedFacts, ordersOf } from '../../records/work/orders.js';
import { type RegisteredSerial, registerFacts } from '../../records/work/register-facts.js';
import type { LockedStep } from '../../records/work/step-records.js';

/** What was made of an entry, and what the register knows as the serial typed. */
export interface Judged {
  readonly judgement: Judgement;
  readonly componentId: string | null;
  /** When it was entered. */
  readonly at: Date;
}

/** Judges entries on the order, the register and the tool as they are now. */
@Injectable()
export class JudgeCapture {
  constructor(
    private readonly tools: ToolRecords,
    private readonly clock: Clock,
  ) {}

  /** Refuses: NOT_FOUND about `toolId`. */
  async of(
    tx: Tx,
    operatorId: number,
    {
      locked,
      capture,
      typed,
      toolId,
    }: {
      readonly locked: LockedStep;
      readonly capture: Capture;
      readonly typed: Typed;
      readonly toolId: string | null;
    },
  ): Promise<Judged> {
    const at = this.clock.now();
    const tool = toolId === null ? null : await this.tools.facts(tx, operatorId, toolId);
    const [order] = await ordersOf(tx, operatorId, locked.packageId);
    const register = await this.registered(tx, operatorId, typed, order?.slot.kind ?? null);
    const judgement = judgeEntry(capture, typed, {
      tool,
      entries: stepFacts(locked.step).entries,
      on: dateOf(toInstant(at)),
      ordered: order === undefined ? null : orderedFacts(order),
      register,
    });
    return { judgement, componentId: register?.componentId ?? null, at };
  }

  private async registered(
    tx: Tx,
    operatorId: number,
    typed: Typed,
    kind: string | null,
  ): Promise<RegisteredSerial | null> {
    if (typed.kind !== 'component-off' && typed.kind !== 'component-on') return null;
    return registerFacts(tx, operatorId, typed, kind);
  }
}
