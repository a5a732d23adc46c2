import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import {
  AuthorisationDto,
  AuthorisationsQueryDto,
  EndAuthorisationDto,
  NewAuthorisationDto,
  VoidAuthorisationDto,
} from './authorisation.dto.js';
import { AuthorisationsService } from './authorisations.service.js';

@ApiTags('people')
@Controller('authorisations')
export class AuthorisationsController {
  constructor(private readonly service: AuthorisationsService) {}

  /** Who may sign what, on which type and until when; of one person or of everyone, ended and voided ones marked. */
  @Get()
  list(@CurrentActor() actor: Actor, @Query() query: AuthorisationsQueryDto): Promise<AuthorisationDto[]> {
    return this.service.list(actor, query);
  }

  /** Lets a person sign work, inspections or releases. It counts at once. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewAuthorisationDto,
  ): Promise<AuthorisationDto> {
    return this.service.add(actor, act, asked);
  }

  /** Ends an authorisation with a day, past or to come; yesterday ends it at once. Answers the one that stands in its place, good through that day. */
  @Post(':id/end')
  end(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: EndAuthorisationDto,
  ): Promise<AuthorisationDto> {
    return this.service.end(actor, act, { id, ...asked });
  }

  /**
   * Voids an authorisation that was recorded wrongly: it never counted. What was signed under it stays in sight, and
   * is held against packages that are not released yet.
   */
  @Post(':id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidAuthorisationDto,
  ): Promise<AuthorisationDto> {
    return this.service.void(actor, act, { id, reason });
  }
}
