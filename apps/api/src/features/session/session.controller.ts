import { Body, Controller, Delete, Get, HttpCode, Post, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { refuseWrongToken } from '../../platform/access/access.guard.js';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { clearSessionCookie, setSessionCookie } from '../../platform/access/session-cookie.js';
import { Sessions, type SessionView } from '../../platform/access/sessions.js';
import { Config } from '../../platform/config/config.js';
import '../../platform/http/request.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { ChangePasswordDto, ChoosePinDto, SessionDto, SignInDto } from './session.dto.js';
import { toSessionDto } from './session.mapper.js';
import { SessionService } from './session.service.js';

@Controller('session')
export class SessionController {
  constructor(
    private readonly service: SessionService,
    private readonly sessions: Sessions,
    private readonly config: Config,
  ) {}

  /** Whose session this is. */
  @Get()
  show(@Req() request: FastifyRequest): Promise<SessionDto> {
    return this.told(request.session ?? refuse({ code: 'NOT_SIGNED_IN' }));
  }

  /** Signs in. The session's token is in a cookie that no script can read. */
  @Post()
  @HttpCode(201)
  async begin(
    @Body() body: SignInDto,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<SessionDto> {
    const { token, expiresAt, view } = await this.service.begin(body);
    // A browser has one session: signing in again ends the one before.
    if (request.session !== null)
      await this.sessions.end(request.session.operatorId, request.session.sessionId);
    setSessionCookie(reply, this.config, token, expiresAt);
    return this.told(view);
  }

  /** Signs out. Without a session there is nothing to end, which is no fault. */
  @Delete()
  @HttpCode(204)
  async end(@Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<void> {
    if (request.session !== null) {
      refuseWrongToken(request, request.session);
      await this.sessions.end(request.session.operatorId, request.session.sessionId);
    }
    clearSessionCookie(reply, this.config);
  }

  /** Changes one's own password and ends one's other sessions. */
  @Post('password')
  @HttpCode(200)
  async changePassword(
    @CurrentActor() actor: Actor,
    @Body() body: ChangePasswordDto,
    @Req() request: FastifyRequest,
  ): Promise<SessionDto> {
    const view = request.session ?? refuse({ code: 'NOT_SIGNED_IN' });
    await this.service.changePassword(actor, view, body);
    return this.told({ ...view, mustChangePassword: false });
  }

  /** Chooses the PIN that signs at a tablet. */
  @Post('pin')
  @HttpCode(200)
  async choosePin(
    @CurrentActor() actor: Actor,
    @Body() body: ChoosePinDto,
    @Req() request: FastifyRequest,
  ): Promise<SessionDto> {
    const view = request.session ?? refuse({ code: 'NOT_SIGNED_IN' });
    await this.service.choosePin(actor, body);
    return this.told(view);
  }

  private async told(view: SessionView): Promise<SessionDto> {
    return toSessionDto(view, await this.service.hasPin(view));
  }
}
