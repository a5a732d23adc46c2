import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { NewPackageDto, WithdrawPackageDto } from './new-package.dto.js';
import { OpenPackageService } from './open-package.service.js';
import { PackageDto, PackagesPageDto, PackagesQueryDto } from './packages.dto.js';
import { PackagesService } from './packages.service.js';
import { WithdrawPackageService } from './withdraw-package.service.js';

@ApiTags('packages')
@Controller('packages')
export class PackagesController {
  constructor(
    private readonly packages: PackagesService,
    private readonly opening: OpenPackageService,
    private readonly withdrawing: WithdrawPackageService,
  ) {}

  /** Work packages, the newest first. */
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: PackagesQueryDto): Promise<PackagesPageDto> {
    return this.packages.page(actor, query);
  }

  /** One work package with its order, its changes and its release. */
  @Get(':id')
  get(@CurrentActor() actor: Actor, @Id() id: string): Promise<PackageDto> {
    return this.packages.get(actor, id);
  }

  /** Opens a package with the steps of a procedure and steps of its own, with what is to be changed and met. */
  @Post()
  open(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewPackageDto,
  ): Promise<PackageDto> {
    return this.opening.open(actor, act, asked);
  }

  /** Gives up an open package in which nothing was moved and nothing is open. */
  @Post(':id/withdraw')
  @HttpCode(200)
  withdraw(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: WithdrawPackageDto,
  ): Promise<PackageDto> {
    return this.withdrawing.withdraw(actor, act, { id, reason });
  }
}
