import { Injectable } from '@nestjs/common';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { dayFromWire, dayOf, toInstant } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Standings } from '../../records/requirements/standings.js';
import type { NewShopReturnDto } from './shop-visit.dto.js';

/** What a return records beside moves, and of what. */
export interface ShopFactsOf {
  readonly visitId: string;
  readonly componentId: string;
  /** The component and all that is in it as it came back. */
  readonly within: ReadonlySet<string>;
  readonly at: Date;
  readonly number: bigint;
  readonly asked: NewShopReturnDto;
  readonly issuedBy: string;
}

/** Resets, ratings, requirements met, preservation and tag of a return. */
@Injectable()
export class ShopFacts {
  constructor(private readonly standings: Standings) {}

  /** Writes them all. Refuses: INVALID_FIELDS, NOT_FOUND, ALREADY_EXISTS, BEFORE_OPENING, REFUSED_BY_FACTS, each about its field. */
  async record(tx: Tx, operatorId: number, facts: ShopFactsOf): Promise<void> {
    await resets(tx, operatorId, facts);
    await rating(tx, operatorId, facts);
    await this.accomplishments(tx, operatorId, facts);
    await keeping(tx, operatorId, facts);
  }

  private async accomplishments(
    tx: Tx,
    operatorId: number,
    { within, at, number, asked }: ShopFactsOf,
  ): Promise<void> {
    const rows = asked.accomplishments ?? [];
    if (rows.length === 0) return;
    const componentIds = [...new Set(rows.map((row) => row.componentId))].filter((id) => within.has(id));
    const standings = await this.standings.of(tx, operatorId, { airframeIds: [], componentIds });
    for (const [index, { requirementId, componentId }] of rows.entries()) {
      const isFor = standings.some(
        ({ requirement, subject }) => requirement.id === requirementId && subject.componentId === componentId,
      );
      const field = `accomplishments[${index}].requirementId`;
      if (!isFor)
        refuse({
          code: 'REFUSED_BY_FACTS',
          field,
          reason: 'No requirement in force with this id is for what was in the shop.',
          fix: 'Choose one that the component lists under Requirements.',
        });
      if (
        rows.findIndex((row) => row.requirementId === requirementId && row.componentId === componentId) <
        index
      )
        refuseTwice(field, 'This requirement is named twice for the same component.');
    }
    await tx.accomplishment.createMany({
      data: rows.map(({ requirementId, componentId, evidence }) => ({
        ...{ operatorId, id: newId(), requirementId, componentId, at },
        doneOn: dayFromWire(at.toISOString().slice(0, 10)) ?? at,
        evidence: evidence ?? asked.report,
        recordedSeq: number,
      })),
    });
  }
}

async function resets(tx: Tx, operatorId: number, facts: ShopFactsOf): Promise<void> {
  const { visitId, within, at, number, asked } = facts;
  const rows = asked.resets ?? [];
  for (const [index, { componentId, kind }] of rows.entries()) {
    const field = `resets[${index}].componentId`;
    if (!within.has(componentId))
      refuse({
        code: 'REFUSED_BY_FACTS',
        field,
        reason: 'This component was not in what came back.',
        fix: 'Choose the component itself, or one that was in it at its return.',
      });
    if (rows.findIndex((row) => row.componentId === componentId && row.kind === kind) < index)
      refuseTwice(field, 'This counter is reset twice.');
    const same = await tx.reset.findFirst({
      where: { operatorId, componentId, kind, at, voidedSeq: null },
      select: { id: true },
    });
    if (same !== null)
      refuse({
        code: 'ALREADY_EXISTS',
        what: `a record of this ${kind} at`,
        field,
        value: asked.returnedAt,
      });
    await refuseBeforeOpening(tx, operatorId, { componentId, at, field });
  }
  await tx.reset.createMany({
    data: rows.map(({ componentId, kind, evidence }) => ({
      ...{ operatorId, id: newId(), componentId, kind, at },
      evidence: evidence ?? asked.report,
      shopVisitId: visitId,
      recordedSeq: number,
    })),
  });
}

function refuseTwice(field: string, reason: string): never {
  return refuse({ code: 'INVALID_FIELDS', fields: [{ field, reason, fix: 'Name it once.' }] });
}

async function rating(tx: Tx, operatorId: number, facts: ShopFactsOf): Promise<void> {
  const { componentId, at, number, asked } = facts;
  const code = asked.ratingCode ?? null;
  if (code === null) return;
  const { kind, engineModelId } = await tx.component.findUniqueOrThrow({
    where: { operatorId_id: { operatorId, id: componentId } },
    select: { kind: true, engineModelId: true },
  });
  if (kind !== 'engine' || engineModelId === null)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'ratingCode',
      reason: 'Only an engine runs at a rating.',
      fix: 'Leave it out.',
    });
  const found = orNotFound(
    await tx.rating.findFirst({ where: { operatorId, engineModelId, code }, select: { id: true } }),
    'rating of this model',
    'ratingCode',
  );
  await refuseBeforeOpening(tx, operatorId, { componentId, at, field: 'returnedAt' });
  await tx.ratingChange.create({
    data: {
      ...{ operatorId, id: newId(), componentId, ratingId: found.id, at },
      source: asked.report,
      recordedSeq: number,
    },
  });
}

async function keeping(tx: Tx, operatorId: number, facts: ShopFactsOf): Promise<void> {
  const { componentId, at, number, asked, issuedBy } = facts;
  const { preservation = null, tag = null } = asked;
  const base = { operatorId, componentId, at, recordedSeq: number };
  if (preservation !== null) {
    const { method, document } = preservation;
    if (dayOf(preservation.goodUntil) < dayOf(asked.returnedAt.slice(0, 10)))
      refuse({
        code: 'INVALID_FIELDS',
        fields: [
          {
            field: 'preservation.goodUntil',
            reason: 'It would have run out before the return.',
            fix: 'Enter the last day it holds, from its document.',
          },
        ],
      });
    const goodUntil = dayOf(preservation.goodUntil);
    await tx.preservation.create({ data: { ...base, id: newId(), method, document, goodUntil } });
  }
  if (tag !== null)
    await tx.serviceabilityTag.create({
      data: { ...base, ...tag, id: newId(), certificate: asked.certificate ?? null, issuedBy },
    });
}

async function refuseBeforeOpening(
  tx: Tx,
  operatorId: number,
  { componentId, at, field }: { readonly componentId: string; readonly at: Date; readonly field: string },
): Promise<void> {
  const opening = await tx.opening.findFirst({
    where: { operatorId, componentId, basis: 'new', voidedSeq: null, at: { gt: at } },
  });
  if (opening !== null)
    refuse(
      {
        code: 'BEFORE_OPENING',
        componentId,
        at: toInstant(at),
        openingAt: toInstant(opening.at),
        source: opening.source,
      },
      field,
    );
}
