import { Body, Controller, Get, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import type { Proof } from '../../platform/access/signers.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { ReleaseCheckDto, ReleaseNoteDto, SignReleaseDto } from './release.dto.js';
import { ReleaseService } from './release.service.js';

@ApiTags('release')
@Controller()
export class ReleaseController {
  constructor(private readonly release: ReleaseService) {}

  /** What stands against releasing a package, worst first, and the words that would be signed. */
  @Get('packages/:id/release-check')
  check(@CurrentActor() actor: Actor, @Id() id: string): Promise<ReleaseCheckDto> {
    return this.release.check(actor, id);
  }

  /** Signs the release of a package. */
  @Post('packages/:id/release')
  sign(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @IfMatch() version: number,
    @Id() packageId: string,
    @Body() { password = '', pin, digest }: SignReleaseDto,
  ): Promise<ReleaseNoteDto> {
    const proof: Proof =
      pin === undefined ? { method: 'password', secret: password } : { method: 'pin', secret: pin };
    return this.release.sign(actor, act, { packageId, version, digest, proof });
  }

  /** A release as it was signed, with the check it froze. */
  @Get('releases/:id')
  get(@CurrentActor() actor: Actor, @Id() id: string): Promise<ReleaseNoteDto> {
    return this.release.get(actor, id);
  }
}
