import { Body, Controller, Get, Header, HttpCode, Post, Query, Req, StreamableFile } from '@nestjs/common';
import { ApiBody, ApiConsumes, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyRequest } from 'fastify';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { OwnStepDto } from '../../records/work/wire/own-step.dto.js';
import { StepDto } from '../../records/work/wire/step.dto.js';
import { AddStepService } from './add-step.service.js';
import { EntriesService } from './entries.service.js';
import { MyWorkService } from './my-work.service.js';
import { photoOf } from './photo.js';
import { PhotosService } from './photos.service.js';
import { MyWorkDto, NewEntryDto, NewPhotoQueryDto, VoidEntryDto, WorkDto } from './work.dto.js';
import { WorkService } from './work.service.js';

const PICTURE = { type: 'string', format: 'binary' } as const;

@ApiTags('work')
@Controller()
export class WorkStepsController {
  constructor(
    private readonly work: WorkService,
    private readonly adding: AddStepService,
    private readonly entries: EntriesService,
    private readonly photos: PhotosService,
    private readonly mine: MyWorkService,
  ) {}

  /** The steps that wait for the person of the session, by package. */
  @Get('my-work')
  mineNow(@CurrentActor() actor: Actor): Promise<MyWorkDto> {
    return this.mine.of(actor);
  }

  /** A package with its steps as they stand: what is captured, signed, missing and open. */
  @Get('packages/:id/steps')
  list(@CurrentActor() actor: Actor, @Id() id: string): Promise<WorkDto> {
    return this.work.get(actor, id);
  }

  /** Adds a step that no procedure has to an open package. */
  @Post('packages/:id/steps')
  add(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() own: OwnStepDto,
  ): Promise<StepDto> {
    return this.adding.add(actor, act, id, own);
  }

  /** Records what was captured in a step, exactly as typed, with what is made of it. */
  @Post('steps/:id/entries')
  record(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() asked: NewEntryDto,
  ): Promise<StepDto> {
    return this.entries.record(actor, act, id, asked);
  }

  /** Records a picture, sent as the body itself. */
  @Post('steps/:id/photos')
  @ApiConsumes('image/jpeg', 'image/png', 'image/webp')
  @ApiBody({ schema: PICTURE })
  recordPhoto(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Query() { capture, fileName }: NewPhotoQueryDto,
    @Req() { body }: FastifyRequest,
  ): Promise<StepDto> {
    return this.entries.recordPhoto(actor, act, id, { capture, photo: photoOf(body, fileName) });
  }

  /** Strikes an entry out; it stays in sight with the reason. */
  @Post('step-entries/:id/void')
  @HttpCode(200)
  void(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() id: string,
    @Body() { reason }: VoidEntryDto,
  ): Promise<StepDto> {
    return this.entries.void(actor, act, { id, reason });
  }

  /** A picture. */
  @Get('step-photos/:id')
  @Header('content-security-policy', "default-src 'none'; sandbox")
  @ApiOkResponse({
    description: 'The picture.',
    content: {
      'image/jpeg': { schema: PICTURE },
      'image/png': { schema: PICTURE },
      'image/webp': { schema: PICTURE },
    },
  })
  async photo(@CurrentActor() actor: Actor, @Id() id: string): Promise<StreamableFile> {
    const { mediaType, bytes, fileName } = await this.photos.get(actor, id);
    return new StreamableFile(bytes, {
      type: mediaType,
      disposition: `inline; filename="${fileName}"`,
      length: bytes.length,
    });
  }
}
