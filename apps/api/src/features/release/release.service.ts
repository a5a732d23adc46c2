import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { mayBeReleased } from '@strutbook/domain/release/check-release.js';
import { signedStatement } from '@strutbook/domain/signing/statement.js';
import { canonical, type Json } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import { Passwords } from '../../platform/access/passwords.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { requireVersion } from '../../platform/http/if-match.js';
import { fromInstant, instantToWire, toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import { checkToWire, frozenCheck, noteToWire } from './check.mapper.js';
import type { ReleaseCheckDto, ReleaseNoteDto } from './release.dto.js';
import { type MadeCheck, plainContent, ReleaseCheck } from './release-check.js';
import { printed, workSummary } from './work.js';

/** What a signer sends: the version and the digest of what was seen. */
export interface SignRelease {
  readonly packageId: string;
  readonly version: number;
  readonly digest: string;
  readonly password: string;
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
      const release = await tx.release.findUnique({ where: { operatorId_packageId: { operatorId, packageId } }, include: WITH_SIGNATURE });
      if (release !== null) return { ...frozenCheck(release).check, released: true, version: release.package.version };
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
      const body = await this.write(tx, { actor, licence, made, number, key: act.key });
      return { status: 201, body, version: body.version, resource: `/api/releases/${body.id}`, number };
    });
  }

  private async lock(tx: Tx, operatorId: number, { packageId, version }: SignRelease): Promise<void> {
    const found = await tx.workPackage.findUnique({ where: { operatorId_id: { operatorId, id: packageId } }, select: { airframeId: true } });
    const { airframeId } = orNotFound(found, 'package');
    await tx.$queryRaw`SELECT id FROM carrier WHERE operator_id = ${operatorId}::int AND id = ${airframeId}::uuid FOR NO KEY UPDATE`;
    await tx.$queryRaw`SELECT id FROM work_package WHERE operator_id = ${operatorId}::int AND id = ${packageId}::uuid FOR NO KEY UPDATE`;
    const release = await tx.release.findUnique({ where: { operatorId_packageId: { operatorId, packageId } }, select: { number: true } });
    if (release !== null) refuse({ code: 'ALREADY_RELEASED', number: release.number });
    const locked = await tx.workPackage.findUniqueOrThrow({ where: { operatorId_id: { operatorId, id: packageId } }, select: { version: true } });
    requireVersion(locked.version, version, 'the package');
  }

  private async write(
    tx: Tx,
    { actor, licence, made, number, key }: { actor: Actor; licence: string; made: MadeCheck; number: bigint; key: string },
  ): Promise<ReleaseNoteDto> {
    const { operatorId } = actor;
    const { work, snapshot, ruleSet } = made;
    const [id, signatureId] = [newId(), newId()];
    const releaseNumber = `RN-${String(number).padStart(4, '0')}`;
    const signedAt = instantToWire(snapshot.at);
    const statement =
      `${ruleSet.releaseStatement} ${workSummary(work)} ` +
      `Release ${releaseNumber}, signed by ${actor.fullName}, certificate ${licence}, ${printed(signedAt)}.`;
    const check = { ...checkToWire(made), released: true, version: work.version + 1 };
    const frozen = plainContent({
      frozen: { check, statement, ruleSet: check.ruleSet, airframe: work.airframe.registration },
      looked: snapshot,
      work: { id: work.id, number: work.number, kind: work.kind, changes: work.changes },
    });
    const text = canonical(frozen);
    const snapshotHash = sha256(text);
    const signed = signedStatement({
      purpose: 'release',
      statement,
      signer: { personId: actor.personId, name: actor.fullName, certificate: licence },
      subject: { kind: 'work-package', id: work.id },
      contentHash: snapshotHash.toString('hex'),
      ruleSet: ruleSet.code,
      at: snapshot.at,
    });
    const contentHash = sha256(canonical(signed as Json));
    await tx.signature.create({
      data: {
        operatorId,
        id: signatureId,
        personId: actor.personId,
        personName: actor.fullName,
        licence,
        meaning: 'release',
        statement,
        contentHash: new Uint8Array(contentHash),
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
        number: releaseNumber,
        signatureId,
        ruleSet: ruleSet.code,
        snapshot: text,
        snapshotHash: new Uint8Array(snapshotHash),
        recordedSeq: number,
      },
    });
    const where = { operatorId_id: { operatorId, id: work.id } };
    await tx.workPackage.update({ where, data: { status: 'released', version: { increment: 1 } } });
    await this.journal.append(tx, actor, {
      number,
      stream: work.airframe.id,
      kind: 'package-released',
      body: { releaseId: id, releaseNumber, signatureId, packageId: work.id, packageNumber: work.number, signed: signed as Json, signatureHash: contentHash.toString('hex') },
      about: [id, work.id, actor.personId],
      key,
    });
    return noteToWire(await tx.release.findUniqueOrThrow({ where: { operatorId_id: { operatorId, id } }, include: WITH_SIGNATURE }), signedAt);
  }
}

function refuseUnlessClear({ objections, digest, snapshot, work, ruleSet }: MadeCheck, seen: string): void {
  if (!mayBeReleased(objections)) {
    const { objections: told } = checkToWire({ objections, digest, snapshot, work, ruleSet });
    refuse({ code: 'RELEASE_BLOCKED', objections: told.filter((objection) => objection.severity === 'blocking') });
  }
  if (digest !== seen) refuse({ code: 'CHECK_CHANGED', what: 'what the release check looked at', seen, now: digest });
}

function sha256(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}
