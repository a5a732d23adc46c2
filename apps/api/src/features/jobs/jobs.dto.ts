/** What a job made. */
export class JobResultDto {
  /** The document it prepared, where that is what it does. */
  documentId?: string;
}

/** Long work and how far it is. */
export class JobDto {
  id!: string;
  kind!: string;
  state!: 'queued' | 'running' | 'done' | 'failed' | 'cancelled';
  done!: number;
  /** How much there is to do; null while that is not known. */
  total!: number | null;
  subjectId!: string | null;
  result!: JobResultDto | null;
  /** Why it failed. */
  failure!: string | null;
}
