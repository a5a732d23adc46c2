import { Body, Controller, Get, HttpCode, Post } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { NewPersonDto, PeopleDto, PersonDto } from './people.dto.js';
import { PeopleService } from './people.service.js';

@Controller('people')
export class PeopleController {
  constructor(private readonly service: PeopleService) {}

  /** Everyone of the operator. */
  @Get()
  list(@CurrentActor() actor: Actor): Promise<PeopleDto> {
    return this.service.list(actor);
  }

  /** Adds someone who may sign in. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() person: NewPersonDto,
  ): Promise<PersonDto> {
    return this.service.add(actor, act, person);
  }

  /** Shuts someone out and ends their sessions; what they signed stays. */
  @Post(':id/disable')
  @HttpCode(200)
  disable(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @IfMatch() seen: number,
  ): Promise<PersonDto> {
    return this.service.disable(actor, act, { id, seen });
  }
}
