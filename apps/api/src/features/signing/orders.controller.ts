import { Body, Controller, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { AmendedOrderDto, AmendOrderDto } from './amend-order.dto.js';
import { AmendOrderService } from './amend-order.service.js';

@ApiTags('orders')
@Controller('packages')
export class OrdersController {
  constructor(private readonly amendOrder: AmendOrderService) {}

  /** Puts another order in place of the one that stands, confirmed by a second person at the same tablet. */
  @Post(':id/order')
  amend(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @IfMatch() seen: number,
    @Id() packageId: string,
    @Body() amending: AmendOrderDto,
  ): Promise<AmendedOrderDto> {
    return this.amendOrder.amend(actor, act, { ...amending, packageId, seen });
  }
}
