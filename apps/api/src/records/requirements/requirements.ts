import { Injectable } from '@nestjs/common';
import type { Tx } from '../../platform/database/database.js';
import type { PackageRequirementRow, RequirementStatus } from './requirement-status.js';

/** A requirement named for a package: exactly one of the subjects is given. */
export interface NamedRequirement {
  readonly requirementId: string;
  readonly airframeId?: string | null;
  readonly positionId?: string | null;
  readonly componentId?: string | null;
}

/** Requirements: what is due, what a package is to meet, and that it was met. */
@Injectable()
export class Requirements {
  /**
   * All requirements of an airframe (itself, its positions and all that hangs on it) or of a component (itself and all
   * beneath it), at an instant or now. A constant number of statements.
   */
  statusesOn(
    _tx: Tx,
    _operatorId: number,
    _of: { readonly airframeId: string } | { readonly componentId: string },
    _at: Date | null,
  ): Promise<RequirementStatus[]> {
    throw new Error('not written yet');
  }

  /** Names requirements for an open package. Refuses: NOT_FOUND, INVALID_FIELDS (field 'requirements[n]…'). */
  name(
    _tx: Tx,
    _operatorId: number,
    _packageId: string,
    _requirements: readonly NamedRequirement[],
    _number: bigint,
  ): Promise<void> {
    throw new Error('not written yet');
  }

  /** The requirements a package is to meet. */
  ofPackage(_tx: Tx, _operatorId: number, _packageId: string): Promise<PackageRequirementRow[]> {
    throw new Error('not written yet');
  }

  /** Records that what a package was to meet was met, at the instant of its release, and computes what is due anew. */
  accomplish(
    _tx: Tx,
    _operatorId: number,
    _done: {
      readonly packageId: string;
      readonly at: Date;
      readonly number: bigint;
      readonly evidence: string;
    },
  ): Promise<void> {
    throw new Error('not written yet');
  }
}
