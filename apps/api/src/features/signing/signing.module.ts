import { Module } from '@nestjs/common';
import { AmendOrderService } from './amend-order.service.js';
import { OrdersController } from './orders.controller.js';
import { SignStepService } from './sign-step.service.js';
import { SignerAuthority } from './signer-authority.js';
import { SigningController } from './signing.controller.js';
import { StatementsService } from './statements.service.js';
import { StepMoves } from './step-moves.js';
import { UndoSignatureService } from './undo-signature.service.js';

@Module({
  controllers: [SigningController, OrdersController],
  providers: [
    StatementsService,
    SignStepService,
    UndoSignatureService,
    AmendOrderService,
    SignerAuthority,
    StepMoves,
  ],
})
export class SigningModule {}
