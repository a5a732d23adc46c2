import { Injectable } from '@nestjs/common';
import { mayBeReleased } from '@strutbook/domain/release/check-release.js';
import type { Actor } from '../../platform/access/actor.js';
import { Passwords } from '../../platform/access/passwords.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { requireVersion } from '../../platform/http/if-match.js';
import { fromInstant, toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import { checkToWire, frozenCheck, noteToWire } from './check.mapper.js';
import type { ReleaseCheckDto, ReleaseNoteDto } from './release.dto.js';
import { type MadeCheck, ReleaseCheck } from './release-check.js';
import { type SealedRelease, sealRelease } from './sealed-release.js';

/** What a signer sends: the version and the digest of what was seen. */
export interface SignRelease {
  readonly packageId: string;
  readonly version: number;
  readonly digest: string;
  readonly password: string;
}

interface Writing {
  readonly actor: Actor;
  readonly made: MadeCheck;
  readonly sealed: SealedRelease;
  readonly number: bigint;
  readonly key: string;
}

const WITH_SIGNATURE = { package: true, signature: true } as const;

/** Release to service: judged on the records under lock, signed by the person of the session, frozen with all it looked at. */
@Injectable()
export class ReleaseService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly passwords: Passwords,
    private readonly journal: Journal,
    private readonly releaseCheck: ReleaseCheck,
  ) {}

  /** What stands against releasing a package now; of a released one, what its release froze. Refuses: NOT_FOUND. */
  check(actor: Actor, packageId: string): Promise<ReleaseCheckDto> {
    return this.database.inOperator(actor, async (tx) => {
      const { operatorId } = actor;
      const release = await tx.release.findUnique({
        where: { operatorId_packageId: { operatorId, packageId } },
        include: WITH_SIGNATURE,
      });
      if (release !== null)
        return { ...frozenCheck(release).check, released: true, version: release.package.version };
      return checkToWire(await this.releaseCheck.make(tx, operatorId, packageId));
    });
  }

  /** A release as it was signed. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<ReleaseNoteDto> {
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId: actor.operatorId, id } };
      const release = orNotFound(await tx.release.findUnique({ where, include: WITH_SIGNATURE }), 'release');
      return noteToWire(release, toWire(release.signature.signedAt));
    });
  }

  /**
   * Signs the release of a package: certifying staff with a certificate number, by their password.
   *
   * The airframe's head is locked first, so that nothing is logged under the check, then the package; then all is
   * read and judged again.
   * Refuses: LICENCE_MISSING, WRONG_PASSWORD, TOO_MANY_ATTEMPTS, NOT_FOUND, ALREADY_RELEASED, STALE, RELEASE_BLOCKED,
   * CHECK_CHANGED.
   */
  async sign(actor: Actor, act: ActRequest, signing: SignRelease): Promise<ReleaseNoteDto> {
    const { licence } = actor;
    if (licence === null || licence.trim() === '') refuse({ code: 'LICENCE_MISSING' });
    await this.passwords.verifyPassword(actor, signing.password);
    return this.acts.perform(actor, act, async (tx) => {
      await this.lock(tx, actor.operatorId, signing);
      const made = await this.releaseCheck.make(tx, actor.operatorId, signing.packageId);
      refuseUnlessClear(made, signing.digest);
      const number = await this.journal.number(tx);
      const sealed = sealRelease(made, { actor, licence, number: `RN-${String(number).padStart(4, '0')}` });
      const body = await this.write(tx, { actor, made, sealed, number, key: act.key });
      return { status: 201, body, version: body.version, resource: `/api/releases/${body.id}`, number };
    });
  }

  private async lock(tx: Tx, operatorId: number, { packageId, version }: SignRelease): Promise<void> {
    const found = await tx.workPackage.findUnique({
      where: { operatorId_id: { operatorId, id: packageId } },
      select: { airframeId: true },
    });
    const { airframeId } = orNotFound(found, 'package');
    await tx.$queryRaw`SELECT id FROM carrier WHERE operator_id = ${operatorId}::int AND id = ${airframeId}::uuid FOR NO KEY UPDATE`;
    await tx.$queryRaw`SELECT id FROM work_package WHERE operator_id = ${operatorId}::int AND id = ${packageId}::uuid FOR NO KEY UPDATE`;
    const release = await tx.release.findUnique({
      where: { operatorId_packageId: { operatorId, packageId } },
      select: { number: true },
    });
    if (release !== null) refuse({ code: 'ALREADY_RELEASED', number: release.number });
    const locked = await tx.workPackage.findUniqueOrThrow({
      where: { operatorId_id: { operatorId, id: packageId } },
      select: { version: true },
    });
    requireVersion(locked.version, version, 'the package');
  }

  private async write(tx: Tx, { actor, made, sealed, number, key }: Writing): Promise<ReleaseNoteDto> {
    const { operatorId } = actor;
    const { work, snapshot, ruleSet } = made;
    const [id, signatureId] = [newId(), newId()];
    await tx.signature.create({
      data: {
        operatorId,
        id: signatureId,
        personId: actor.personId,
        personName: actor.fullName,
        licence: actor.licence,
        meaning: 'release',
        statement: sealed.statement,
        contentHash: new Uint8Array(sealed.signatureDigest),
        method: 'password',
        signedAt: fromInstant(snapshot.at),
        recordedSeq: number,
      },
    });
    await tx.release.create({
      data: {
        operatorId,
        id,
        packageId: work.id,
        number: sealed.number,
        signatureId,
        ruleSet: ruleSet.code,
        snapshot: sealed.content,
        snapshotHash: new Uint8Array(sealed.contentDigest),
        recordedSeq: number,
      },
    });
    const where = { operatorId_id: { operatorId, id: work.id } };
    await tx.workPackage.update({ where, data: { status: 'released', version: { increment: 1 } } });
    await this.journal.append(tx, actor, {
      number,
      stream: work.airframe.id,
      kind: 'package-released',
      body: {
        releaseId: id,
        releaseNumber: sealed.number,
        signatureId,
        packageId: work.id,
        packageNumber: work.number,
        signed: sealed.signed,
        signatureHash: sealed.signatureDigest.toString('hex'),
      },
      about: [id, work.id, actor.personId],
      key,
    });
    const written = { where: { operatorId_id: { operatorId, id } }, include: WITH_SIGNATURE };
    return noteToWire(await tx.release.findUniqueOrThrow(written), sealed.signedAt);
  }
}

function refuseUnlessClear({ objections, digest, snapshot, work, ruleSet }: MadeCheck, seen: string): void {
  if (!mayBeReleased(objections)) {
    const { objections: told } = checkToWire({ objections, digest, snapshot, work, ruleSet });
    refuse({
      code: 'RELEASE_BLOCKED',
      objections: told.filter((objection) => objection.severity === 'blocking'),
    });
  }
  if (digest !== seen)
    refuse({ code: 'CHECK_CHANGED', what: 'what the release check looked at', seen, now: digest });
}
