import { Module } from '@nestjs/common';
import { OpenPackageService } from './open-package.service.js';
import { PackagesController } from './packages.controller.js';
import { PackagesService } from './packages.service.js';
import { WithdrawPackageService } from './withdraw-package.service.js';

@Module({
  controllers: [PackagesController],
  providers: [PackagesService, OpenPackageService, WithdrawPackageService],
})
export class PackagesModule {}
