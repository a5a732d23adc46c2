import { toWirePrecise } from '../../platform/http/instants.js';
import type { ImportDto, ImportJobDto, ImportRowDto, SameFileDto } from './import.dto.js';
import { reportFrom } from './import-report.js';

interface Row {
  readonly id: string;
  readonly fileName: string;
  readonly state: string;
  readonly rows: number;
  readonly ready: number;
  readonly failed: number;
  readonly already: number;
  readonly createdAt: Date;
  readonly createdBy: { readonly fullName: string };
}

interface WholeRow extends Row {
  readonly sha256: Uint8Array;
  readonly report: unknown;
  readonly version: number;
}

interface JobRow {
  readonly id: string;
  readonly state: string;
  readonly done: number;
  readonly total: number | null;
  readonly failure: string | null;
}

const ERRORS_SHOWN = 500;

/** An import in a list. Total. */
export function importRowToWire(row: Row): ImportRowDto {
  const { id, fileName, rows, ready, failed, already, createdAt, createdBy } = row;
  const state = row.state as ImportRowDto['state'];
  return {
    id,
    kind: 'flights',
    fileName,
    state,
    rows,
    ready,
    failed,
    already,
    createdBy: createdBy.fullName,
    createdAt: toWirePrecise(createdAt),
  };
}

/** An import with its report and its job. Total. */
export function importToWire(
  row: WholeRow,
  { job, sameAs }: { readonly job: JobRow | null; readonly sameAs: SameFileDto | null },
): ImportDto {
  const { errors, effect, newlyOver, newlyUnknown, overruns, root } = reportFrom(row.report);
  return {
    ...importRowToWire(row),
    sha256: Buffer.from(row.sha256).toString('hex'),
    errors: errors.slice(0, ERRORS_SHOWN).map((error) => ({ ...error })),
    errorsLeftOut: Math.max(0, errors.length - ERRORS_SHOWN),
    effect: effect.map((each) => ({ ...each })),
    newlyOver: [...newlyOver],
    newlyUnknown: [...newlyUnknown],
    overruns: [...overruns],
    sameAs,
    root,
    version: row.version,
    job: job === null ? null : jobToWire(job),
  };
}

function jobToWire({ id, state, done, total, failure }: JobRow): ImportJobDto {
  return { id, state: state as ImportJobDto['state'], done, total, failure };
}
