import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Actor } from '../../platform/access/actor.js';
import { CurrentActor } from '../../platform/access/current-actor.js';
import { ActKey, type ActRequest } from '../../platform/http/act-key.js';
import { Id } from '../../platform/http/id.js';
import { momentOf } from '../../platform/http/instants.js';
import { SignStepService } from './sign-step.service.js';
import {
  GivenSignatureDto,
  SignStepDto,
  StatementDto,
  StatementQueryDto,
  UndoneSignatureDto,
  UndoSignatureDto,
} from './signing.dto.js';
import { StatementsService } from './statements.service.js';
import { UndoSignatureService } from './undo-signature.service.js';

@ApiTags('signing')
@Controller()
export class SigningController {
  constructor(
    private readonly statements: StatementsService,
    private readonly signStep: SignStepService,
    private readonly undoSignature: UndoSignatureService,
  ) {}

  /** The words a signature would be given on, built here, and what keeps the step from being signed. */
  @Get('steps/:id/statement')
  statement(
    @CurrentActor() actor: Actor,
    @Id() stepId: string,
    @Query() { meaning, performedAt, signInName, reinspectionReason }: StatementQueryDto,
  ): Promise<StatementDto> {
    return this.statements.statement(actor, {
      stepId,
      meaning,
      performedAt: momentOf(performedAt),
      signInName: signInName ?? null,
      reinspectionReason: reinspectionReason ?? null,
    });
  }

  /** Signs a step: that it was done, or that another person looked at it. */
  @Post('steps/:id/signatures')
  sign(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() stepId: string,
    @Body() { performedAt, reinspectionReason, counterReading, ...signing }: SignStepDto,
  ): Promise<GivenSignatureDto> {
    return this.signStep.sign(actor, act, {
      ...signing,
      stepId,
      performedAt: momentOf(performedAt),
      reinspectionReason: reinspectionReason ?? null,
      counterReading: counterReading ?? null,
    });
  }

  /** Undoes a signature: it stays visible and no longer counts. */
  @Post('step-signatures/:id/undo')
  @HttpCode(200)
  undo(
    @CurrentActor() actor: Actor,
    @ActKey() act: ActRequest,
    @Id() signatureId: string,
    @Body() undoing: UndoSignatureDto,
  ): Promise<UndoneSignatureDto> {
    return this.undoSignature.undo(actor, act, { ...undoing, signatureId });
  }
}
