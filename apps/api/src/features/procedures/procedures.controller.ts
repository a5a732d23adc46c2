import { Body, Controller, Get, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { NewProcedureDto, ProcedureDto, ProcedureRowDto, ProceduresQueryDto } from './procedures.dto.js';
import { ProceduresService } from './procedures.service.js';

@ApiTags('procedures')
@Controller('procedures')
export class ProceduresController {
  constructor(private readonly procedures: ProceduresService) {}

  /** Procedures with every revision, by code, the latest revision first. */
  @Get()
  list(@CurrentActor() actor: Actor, @Query() query: ProceduresQueryDto): Promise<ProcedureRowDto[]> {
    return this.procedures.list(actor, query);
  }

  /** One revision of a procedure with its steps. */
  @Get(':id')
  get(@CurrentActor() actor: Actor, @Id() id: string): Promise<ProcedureDto> {
    return this.procedures.get(actor, id);
  }

  /** Records a revision of a procedure; it is never changed, a later one gets its own. */
  @Post()
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() asked: NewProcedureDto,
  ): Promise<ProcedureDto> {
    return this.procedures.add(actor, act, asked);
  }
}
