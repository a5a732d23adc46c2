import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { momentOf, toInstant } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { refuseFuture } from '../../platform/time/refuse-future.js';
import { BuildStandards } from '../../records/builds/build-standards.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { airframesOfSlots, lockForStays } from '../../records/stays/stay-facts.js';
import { Stays } from '../../records/stays/stays.js';
import { withAllAbove } from '../../records/usage/kinship.js';
import { stayAt } from './locations-then.js';
import type { NewShopVisitDto } from './shop-visit.dto.js';
import { ShopVisitReader } from './shop-visit-reader.js';
import type { ShopVisitDto } from './shop-visit-view.dto.js';
import { locationNamed } from './visit-rows.js';

/** Components sent to a shop. */
@Injectable()
export class SendToShopService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly stays: Stays,
    private readonly projections: Projections,
    private readonly builds: BuildStandards,
    private readonly reader: ShopVisitReader,
    private readonly clock: Clock,
  ) {}

  /**
   * Sends a component to a shop with a workscope, moving it there unless it is there, and keeps its build and counters.
   * Refuses: NOT_FOUND, IN_THE_FUTURE, REFUSED_BY_FACTS (it hangs on an airframe, is in a shop already, or the place is
   * no shop), and as placements do.
   */
  send(actor: Actor, act: ActRequest, asked: NewShopVisitDto): Promise<ShopVisitDto> {
    const { operatorId } = actor;
    const { componentId, orderReference, workscope } = asked;
    const sentAt = momentOf(asked.sentAt);
    refuseFuture(sentAt, 'sentAt', this.clock.now());
    return this.acts.perform(actor, act, async (tx) => {
      const shop = await locationNamed(tx, operatorId, asked.locationName, {
        kinds: ['shop'],
        field: 'locationName',
        fix: 'Choose a location of kind shop, or add it under Locations.',
      });
      await refuseNotSendable(tx, operatorId, componentId, sentAt);
      const number = await this.journal.number(tx);
      const there = await stayAt(tx, operatorId, componentId, sentAt);
      if (there?.locationId !== shop.id) {
        await this.stays.place(
          tx,
          operatorId,
          {
            componentId,
            place: { kind: 'location', locationId: shop.id },
            boundary: { kind: 'instant', at: toInstant(sentAt) },
            ...{ until: null, airframeId: null, reason: `Order ${orderReference}` },
          },
          number,
        );
        await this.projections.ofComponents(tx, operatorId, [componentId]);
      }
      const build = await this.builds.of(tx, operatorId, componentId, sentAt);
      const id = newId();
      await tx.shopVisit.create({
        data: {
          ...{ operatorId, id, componentId, locationId: shop.id, orderReference, workscope, sentAt },
          build: plainJson(build),
          recordedSeq: number,
        },
      });
      await this.journal.append(tx, actor, {
        number,
        stream: componentId,
        kind: 'sent-to-shop',
        body: plainJson({ ...asked, id, build }),
        about: [componentId, id],
        key: act.key,
      });
      const body = await this.reader.read(tx, operatorId, id);
      return { status: 201, body, number, resource: `/api/shop-visits/${id}` };
    });
  }
}

async function refuseNotSendable(
  tx: Tx,
  operatorId: number,
  componentId: string,
  sentAt: Date,
): Promise<void> {
  await lockForStays(tx, operatorId, {
    airframeIds: [],
    componentIds: await withAllAbove(tx, operatorId, [componentId]),
  });
  const component = orNotFound(
    await tx.component.findUnique({
      where: { operatorId_id: { operatorId, id: componentId } },
      select: { serialNumber: true },
    }),
    'component',
    'componentId',
  );
  const { serialNumber } = component;
  const open = await tx.shopVisit.findFirst({
    where: { operatorId, componentId, voidedSeq: null, shopReturnByVisit: { none: { voidedSeq: null } } },
    select: { orderReference: true },
  });
  const against = (reason: string, fix: string) =>
    refuse({ code: 'REFUSED_BY_FACTS', field: 'componentId', reason, fix });
  if (open !== null)
    against(
      `${serialNumber} is in a shop already, under ${open.orderReference}.`,
      'Record its return, or void that visit.',
    );
  const there = await stayAt(tx, operatorId, componentId, sentAt);
  if (there?.slotId == null) return;
  const [airframeId] = await airframesOfSlots(tx, operatorId, [there.slotId], sentAt);
  if (airframeId === undefined) return;
  const { registration } = await tx.airframe.findUniqueOrThrow({
    where: { operatorId_id: { operatorId, id: airframeId } },
    select: { registration: true },
  });
  against(
    `${serialNumber} hangs on ${registration} at that moment.`,
    'Record its removal first, then send it.',
  );
}
