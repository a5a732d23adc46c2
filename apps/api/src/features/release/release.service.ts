import { Injectable } from '@nestjs/common';
import { mayBeReleased } from '@strutbook/domain/release/check-release.js';
import type { Actor } from '../../platform/access/actor.js';
import { requireRole } from '../../platform/access/require-role.js';
import { type Proof, Signers } from '../../platform/access/signers.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { fromInstant, toWire } from '../../platform/http/instants.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Authorisations } from '../../records/authorisations/authorisations.js';
import { Journal } from '../../records/journal/journal.js';
import { RELEASE_CERTIFICATE } from '../../records/releases/frozen-release.js';
import { Requirements } from '../../records/requirements/requirements.js';
import { sealSignature } from '../../records/signatures/seal-signature.js';
import { airframeCounters } from '../../records/usage/airframe-counters.js';
import { checkToWire, frozenCheck, noteToWire } from './check.mapper.js';
import { holdTools, lockForRelease, signersOf } from './lock-for-release.js';
import type { CertificateDto, ReleaseCheckDto, ReleaseNoteDto } from './release.dto.js';
import { type MadeCheck, ReleaseCheck } from './release-check.js';
import { type SealedRelease, sealRelease } from './sealed-release.js';

/** What a signer sends: the version and the digest of what was seen. */
export interface SignRelease {
  readonly packageId: string;
  readonly version: number;
  readonly digest: string;
  /** The signer's own password or PIN. */
  readonly proof: Proof;
}

interface Writing {
  readonly actor: Actor;
  readonly made: MadeCheck;
  readonly sealed: SealedRelease;
  readonly method: Proof['method'];
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
    private readonly signers: Signers,
    private readonly journal: Journal,
    private readonly releaseCheck: ReleaseCheck,
    private readonly requirements: Requirements,
    private readonly authorisations: Authorisations,
    private readonly jobs: Jobs,
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
      return checkToWire(await this.releaseCheck.make(tx, actor, packageId));
    });
  }

  /** A release as it was signed. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<ReleaseNoteDto> {
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId: actor.operatorId, id } };
      const release = orNotFound(await tx.release.findUnique({ where, include: WITH_SIGNATURE }), 'release');
      const certificate = await certificateOf(tx, actor.operatorId, id);
      return noteToWire(release, toWire(release.signature.signedAt), certificate);
    });
  }

  /**
   * Signs the release of a package: certifying staff with a certificate number, by their password or PIN.
   *
   * What it is on is locked first, so that nothing is logged under the check, then the package, so that nothing is
   * entered or undone in its steps, then who may sign and the tools, so that nothing is taken away meanwhile; then all
   * is read and judged again. In the same transaction the requirements it names
   * are accomplished, and its certificate is put in hand.
   * Refuses: LICENCE_MISSING, WRONG_PASSWORD, WRONG_PIN, TOO_MANY_ATTEMPTS, NOT_ALLOWED, NOT_FOUND, ALREADY_RELEASED, STALE, RELEASE_BLOCKED,
   * CHECK_CHANGED.
   */
  async sign(actor: Actor, act: ActRequest, signing: SignRelease): Promise<ReleaseNoteDto> {
    const { licence } = actor;
    if (licence === null || licence.trim() === '') refuse({ code: 'LICENCE_MISSING' });
    const { method } = signing.proof;
    const signer = await this.signers.prove(actor, signing.proof, method);
    return this.acts.perform(actor, act, async (tx) => {
      const { operatorId } = actor;
      await lockForRelease(tx, operatorId, signing);
      await requireRole(tx, signer, ['certifying-staff']);
      const signed = await signersOf(tx, operatorId, signing.packageId);
      await this.authorisations.hold(tx, operatorId, [...signed, actor.personId]);
      await holdTools(tx, operatorId, signing.packageId);
      const made = await this.releaseCheck.make(tx, actor, signing.packageId);
      refuseUnlessClear(made, signing.digest);
      const airframeId = made.work.airframe?.id ?? null;
      const counters =
        airframeId === null ? null : await airframeCounters(tx, operatorId, [airframeId], null);
      const operator = await tx.operator.findUniqueOrThrow({ where: { id: operatorId } });
      const number = await this.journal.number(tx);
      const sealed = sealRelease(made, {
        actor,
        licence,
        number: `RN-${String(number).padStart(4, '0')}`,
        airframe: counters?.get(airframeId ?? '') ?? null,
        operatorName: operator.name,
      });
      const body = await this.write(tx, { actor, made, sealed, method, number, key: act.key });
      return { status: 201, body, version: body.version, resource: `/api/releases/${body.id}`, number };
    });
  }

  private async write(
    tx: Tx,
    { actor, made, sealed, method, number, key }: Writing,
  ): Promise<ReleaseNoteDto> {
    const { operatorId } = actor;
    const { work, snapshot, ruleSet } = made;
    const subjectId = work.airframe?.id ?? work.component?.id ?? work.id;
    const id = newId();
    const signature = await sealSignature(tx, {
      purpose: 'release',
      signer: { ...actor, method },
      statement: sealed.statement,
      subject: { kind: 'work-package', id: work.id },
      contentHash: sealed.contentDigest.toString('hex'),
      ruleSet: ruleSet.code,
      at: snapshot.at,
      number,
    });
    await tx.release.create({
      data: {
        operatorId,
        id,
        packageId: work.id,
        number: sealed.number,
        signatureId: signature.id,
        ruleSet: ruleSet.code,
        snapshot: sealed.content,
        snapshotHash: new Uint8Array(sealed.contentDigest),
        recordedSeq: number,
      },
    });
    await this.requirements.accomplish(tx, operatorId, {
      packageId: work.id,
      at: fromInstant(snapshot.at),
      number,
      evidence: `Release ${sealed.number} of package ${work.number}`,
    });
    await this.jobs.start(tx, actor, { kind: RELEASE_CERTIFICATE, subjectId: id, input: {} });
    const where = { operatorId_id: { operatorId, id: work.id } };
    await tx.workPackage.update({ where, data: { status: 'released', version: { increment: 1 } } });
    await this.journal.append(tx, actor, {
      number,
      stream: subjectId,
      kind: 'package-released',
      body: {
        releaseId: id,
        releaseNumber: sealed.number,
        signatureId: signature.id,
        packageId: work.id,
        packageNumber: work.number,
        signed: signature.signed,
        signatureHash: signature.hash,
      },
      about: [...new Set([id, work.id, actor.personId, subjectId])],
      key,
    });
    const written = { where: { operatorId_id: { operatorId, id } }, include: WITH_SIGNATURE };
    return noteToWire(await tx.release.findUniqueOrThrow(written), sealed.signedAt, null);
  }
}

/** The printed certificate of a release; null while it is being prepared. */
async function certificateOf(tx: Tx, operatorId: number, releaseId: string): Promise<CertificateDto | null> {
  const row = await tx.document.findFirst({
    where: { operatorId, kind: RELEASE_CERTIFICATE, subjectId: releaseId },
    select: { id: true, fileName: true, pages: true, sha256: true },
  });
  if (row === null) return null;
  const { id, fileName, pages, sha256 } = row;
  return { documentId: id, fileName, pages, sha256: Buffer.from(sha256).toString('hex') };
}

function refuseUnlessClear(made: MadeCheck, seen: string): void {
  const { objections, digest } = made;
  if (!mayBeReleased(objections)) {
    const { objections: told } = checkToWire(made);
    refuse({
      code: 'RELEASE_BLOCKED',
      objections: told.filter((objection) => objection.severity === 'blocking'),
    });
  }
  if (digest !== seen)
    refuse({ code: 'CHECK_CHANGED', what: 'what the release check looked at', seen, now: digest });
}
