import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { ChangePreviewDto, ChangeRequestDto, ConfirmedChangeDto, RecordedChangeDto } from './change.dto.js';
import { toChangeCommand } from './change-command.js';
import { ChangesService } from './changes.service.js';

@ApiTags('changes')
@Controller('changes')
export class ChangesController {
  constructor(private readonly changes: ChangesService) {}

  /** What a change would record: the instant, the counters of both components, and what is held against it. Nothing is written. */
  @Post('preview')
  @HttpCode(200)
  preview(@CurrentActor() actor: Actor, @Body() body: ChangeRequestDto): Promise<ChangePreviewDto> {
    return this.changes.preview(actor, toChangeCommand(body));
  }

  /** Records a removal, an installation or both as one act, and as a package. */
  @Post()
  record(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Body() body: ConfirmedChangeDto,
  ): Promise<RecordedChangeDto> {
    const { confirmDigest, ...request } = body;
    return this.changes.record(actor, act, toChangeCommand(request), confirmDigest);
  }
}
