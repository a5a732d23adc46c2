import { Module } from '@nestjs/common';
import { ReturnFromShopService } from './return-from-shop.service.js';
import { SendToShopService } from './send-to-shop.service.js';
import { ShopChanges } from './shop-changes.js';
import { ShopFacts } from './shop-facts.js';
import { ShopVisitReader } from './shop-visit-reader.js';
import { ShopVisitsController } from './shop-visits.controller.js';
import { ShopVisitsService } from './shop-visits.service.js';
import { VoidShopFactsService } from './void-shop-facts.service.js';

@Module({
  controllers: [ShopVisitsController],
  providers: [
    ShopVisitsService,
    ShopVisitReader,
    SendToShopService,
    ReturnFromShopService,
    VoidShopFactsService,
    ShopChanges,
    ShopFacts,
  ],
})
export class ShopVisitsModule {}
