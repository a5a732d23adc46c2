import { instantToWire } from '../../platform/http/instants.js';
import { toObjection } from '../../platform/http/objection.dto.js';
import { passedChecks } from './passed.js';
import type { CertificateDto, ReleaseCheckDto, ReleaseNoteDto, ReleaseRuleSetDto } from './release.dto.js';
import type { MadeCheck } from './release-check.js';
import { workSummary } from './work.js';

/** A check as it is told. Total. */
export function checkToWire({ work, snapshot, ruleSet, objections, digest }: MadeCheck): ReleaseCheckDto {
  return {
    asOf: instantToWire(snapshot.at),
    packageNumber: work.number,
    summary: workSummary(work),
    ruleSet: { code: ruleSet.code, name: ruleSet.name, source: ruleSet.source },
    statement: ruleSet.releaseStatement,
    digest,
    objections: objections.map(toObjection),
    passed: passedChecks(snapshot, objections),
    released: work.status === 'released',
    version: work.version,
  };
}

/** What a release keeps of its check, as its frozen text has it. */
export interface FrozenCheck {
  readonly check: ReleaseCheckDto;
  readonly statement: string;
  readonly ruleSet: ReleaseRuleSetDto;
  readonly airframe: string | null;
  readonly subject?: string;
}

/** A release row with its signature and package. */
export interface ReleaseRow {
  readonly id: string;
  readonly number: string;
  readonly snapshot: string;
  readonly snapshotHash: Uint8Array;
  readonly package: { readonly id: string; readonly number: string; readonly version: number };
  readonly signature: {
    readonly personName: string;
    readonly licence: string | null;
    readonly statement: string;
    readonly contentHash: Uint8Array;
    readonly signedAt: Date;
  };
}

/** The check a release froze, read from the release itself: nothing recorded later is in it. */
export function frozenCheck({ snapshot }: Pick<ReleaseRow, 'snapshot'>): FrozenCheck {
  return (JSON.parse(snapshot) as { readonly frozen: FrozenCheck }).frozen;
}

/** A release as it was signed. Total. */
export function noteToWire(
  row: ReleaseRow,
  signedAt: string,
  certificate: CertificateDto | null,
): ReleaseNoteDto {
  const { check, ruleSet, airframe, subject } = frozenCheck(row);
  return {
    id: row.id,
    number: row.number,
    packageId: row.package.id,
    packageNumber: row.package.number,
    summary: check.summary,
    airframe,
    subject: subject ?? airframe ?? '',
    ruleSet,
    signedAt,
    person: row.signature.personName,
    licence: row.signature.licence,
    statement: row.signature.statement,
    contentHash: Buffer.from(row.signature.contentHash).toString('hex'),
    snapshotHash: Buffer.from(row.snapshotHash).toString('hex'),
    digest: check.digest,
    objections: check.objections,
    passed: check.passed,
    certificate,
    version: row.package.version,
  };
}
