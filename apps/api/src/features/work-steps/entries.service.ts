import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { type LockedStep, loadStepForUpdate, rehash } from '../../records/work/step-records.js';
import type { StepDto } from '../../records/work/wire/step.dto.js';
import { stepToWire } from '../../records/work/wire/step.mapper.js';
import { captureOf, toTyped } from './asked-capture.js';
import { JudgeCapture } from './judge-capture.js';
import { type Photo, writePhoto } from './photo.js';
import type { NewEntryDto } from './work.dto.js';
import { aboutStep, type WrittenEntry, writeEntry } from './write-entry.js';

/** What is captured in steps: every attempt is kept as typed, and judged. */
@Injectable()
export class EntriesService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly judging: JudgeCapture,
  ) {}

  /**
   * Records what was typed with what is made of it, accepted or not. Signatures on the content before stay in sight and
   * no longer count.
   * Refuses: NOT_FOUND, WRONG_STATE, INVALID_FIELDS.
   */
  record(
    actor: Actor,
    act: ActRequest,
    stepId: string,
    { capture: key, typed: sent, toolId }: NewEntryDto,
  ): Promise<StepDto> {
    return this.inStep(actor, act, stepId, async (tx, locked) => {
      const capture = captureOf(locked.step.definition, key);
      const typed = toTyped(capture, sent);
      const judged = await this.judging.of(tx, actor.operatorId, {
        locked,
        capture,
        typed,
        toolId: toolId ?? null,
      });
      return (number) =>
        writeEntry(tx, actor, { locked, capture, typed, toolId: toolId ?? null, ...judged, number });
    });
  }

  /** Records a picture. Refuses: NOT_FOUND, WRONG_STATE, INVALID_FIELDS. */
  recordPhoto(
    actor: Actor,
    act: ActRequest,
    stepId: string,
    { capture: key, photo }: { readonly capture: string; readonly photo: Photo },
  ): Promise<StepDto> {
    return this.inStep(actor, act, stepId, async (tx, locked) => {
      const capture = captureOf(locked.step.definition, key, 'photo');
      const { fileName, sha256 } = photo;
      const typed = { kind: 'photo', fileName, sha256: sha256.toString('hex') } as const;
      const judged = await this.judging.of(tx, actor.operatorId, { locked, capture, typed, toolId: null });
      return async (number) => {
        const entry = await writeEntry(tx, actor, {
          locked,
          capture,
          typed,
          toolId: null,
          ...judged,
          number,
        });
        await writePhoto(tx, actor.operatorId, { entryId: entry.id, photo, number });
        return entry;
      };
    });
  }

  /** Strikes an entry out; it stays in sight with the reason. Refuses: NOT_FOUND, WRONG_STATE, ALREADY_VOIDED. */
  async void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<StepDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const where = { operatorId_id: { operatorId, id } };
      const found = await tx.stepEntry.findUnique({ where, select: { stepId: true } });
      const { stepId } = orNotFound(found, 'entry');
      const locked = await loadStepForUpdate(tx, operatorId, stepId);
      const entry = orNotFound(
        locked.step.entries.find((each) => each.id === id),
        'entry',
      );
      if (entry.voided) refuse({ code: 'ALREADY_VOIDED', what: 'the entry' });
      const number = await this.journal.number(tx);
      await tx.stepEntry.update({
        where,
        data: { voidedSeq: number, voidReason: reason },
        select: { id: true },
      });
      await this.journal.append(tx, actor, {
        number,
        stream: locked.packageId,
        kind: 'step-entry-voided',
        body: plainJson({
          packageId: locked.packageId,
          stepId,
          entryId: id,
          capture: entry.capture,
          typed: entry.typed,
          reason,
        }),
        about: await aboutStep(tx, operatorId, locked, [entry.componentId]),
        key: act.key,
      });
      return this.answer(tx, operatorId, locked, { number, status: 200 });
    });
  }

  /** Locks a step, lets an entry be judged, then draws the act's number, writes, and hashes the step anew. */
  private inStep(
    actor: Actor,
    act: ActRequest,
    stepId: string,
    prepare: (tx: Tx, locked: LockedStep) => Promise<(number: bigint) => Promise<WrittenEntry>>,
  ): Promise<StepDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const locked = await loadStepForUpdate(tx, operatorId, stepId);
      const write = await prepare(tx, locked);
      const number = await this.journal.number(tx);
      const { componentId, ...entry } = await write(number);
      await this.journal.append(tx, actor, {
        number,
        stream: locked.packageId,
        kind: 'step-captured',
        body: plainJson({ packageId: locked.packageId, stepId, step: locked.step.definition.number, entry }),
        about: await aboutStep(tx, operatorId, locked, [componentId]),
        key: act.key,
      });
      return this.answer(tx, operatorId, locked, { number, status: 201 });
    });
  }

  private async answer(
    tx: Tx,
    operatorId: number,
    { step, all }: LockedStep,
    { number, status }: { readonly number: bigint; readonly status: number },
  ) {
    const now = await rehash(tx, operatorId, step);
    const body = stepToWire(
      now,
      all.map((each) => (each.id === now.id ? now : each)),
    );
    return { status, body, version: body.version, resource: `/api/steps/${step.id}`, number };
  }
}
