import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { Id } from '../../platform/http/id.js';
import { OverrunDto } from '../../records/consequences/consequences.dto.js';
import { OverrunsService } from './overruns.service.js';

@ApiTags('overruns')
@Controller()
export class OverrunsController {
  constructor(private readonly overruns: OverrunsService) {}

  /** When a component, or what hangs in it now, was flown over a limit or a duty that stood then, the latest first. */
  @Get('components/:id/overruns')
  ofComponent(@CurrentActor() actor: Actor, @Id() id: string): Promise<OverrunDto[]> {
    return this.overruns.ofComponent(actor, id);
  }

  /** The same of an airframe, its positions, and all that was flown over a limit while it hung there. */
  @Get('airframes/:id/overruns')
  ofAirframe(@CurrentActor() actor: Actor, @Id() id: string): Promise<OverrunDto[]> {
    return this.overruns.ofAirframe(actor, id);
  }
}
