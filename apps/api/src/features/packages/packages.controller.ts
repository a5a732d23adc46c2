import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { Id } from '../../platform/http/id.js';
import { PackageDto, PackagesPageDto, PackagesQueryDto } from './packages.dto.js';
import { PackagesService } from './packages.service.js';

@ApiTags('packages')
@Controller('packages')
export class PackagesController {
  constructor(private readonly packages: PackagesService) {}

  /** Work packages, the newest first. */
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: PackagesQueryDto): Promise<PackagesPageDto> {
    return this.packages.page(actor, query);
  }

  /** One work package with its changes and its release. */
  @Get(':id')
  get(@CurrentActor() actor: Actor, @Id() id: string): Promise<PackageDto> {
    return this.packages.get(actor, id);
  }
}
