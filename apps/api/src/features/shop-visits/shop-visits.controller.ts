import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { ReturnFromShopService } from './return-from-shop.service.js';
import { SendToShopService } from './send-to-shop.service.js';
import { NewShopReturnDto, NewShopVisitDto, ShopVisitsQueryDto, VoidShopFactDto } from './shop-visit.dto.js';
import { ShopVisitDto, ShopVisitsPageDto } from './shop-visit-view.dto.js';
import { ShopVisitsService } from './shop-visits.service.js';
import { VoidShopFactsService } from './void-shop-facts.service.js';

@ApiTags('shop visits')
@Controller('shop-visits')
export class ShopVisitsController {
  constructor(
    private readonly visits: ShopVisitsService,
    private readonly sending: SendToShopService,
    private readonly returning: ReturnFromShopService,
    private readonly voiding: VoidShopFactsService,
  ) {}

  /** Shop visits, the last sent first. */
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: ShopVisitsQueryDto): Promise<ShopVisitsPageDto> {
    return this.visits.page(actor, query);
  }

  /** One visit: the build standard before and after, and what changed. */
  @Get(':id')
  get(@CurrentActor() actor: Actor, @Id() id: string): Promise<ShopVisitDto> {
    return this.visits.get(actor, id);
  }

  /** Sends a component to a shop with a workscope. */
  @Post()
  send(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewShopVisitDto,
  ): Promise<ShopVisitDto> {
    return this.sending.send(actor, act, asked);
  }

  /** Records the return with everything the shop did, as one act. */
  @Post(':id/return')
  return(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewShopReturnDto,
  ): Promise<ShopVisitDto> {
    return this.returning.return(actor, act, id, asked);
  }

  /** Voids a visit; the component is where it was before. */
  @Post(':id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidShopFactDto,
  ): Promise<ShopVisitDto> {
    return this.voiding.voidVisit(actor, act, id, reason);
  }

  /** Voids the return of a visit with all it recorded; the component is in the shop again. */
  @Post(':id/return/void')
  @HttpCode(200)
  voidReturn(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidShopFactDto,
  ): Promise<ShopVisitDto> {
    return this.voiding.voidReturn(actor, act, id, reason);
  }
}
