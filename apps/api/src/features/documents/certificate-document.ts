import { Injectable, type OnModuleInit } from '@nestjs/common';
import type { JobContext } from '../../platform/jobs/job-handler.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { Clock } from '../../platform/time/clock.js';
import { loadCertificate, RELEASE_CERTIFICATE } from '../../records/releases/frozen-release.js';
import { fileNameOf } from './file-name.js';
import { keepDocument } from './keep-document.js';
import { certificateInThread } from './pdf/certificate-thread.js';

/** Prints the certificate of a release as a job, from what the release froze, and keeps it with its hash. */
@Injectable()
export class CertificateDocument implements OnModuleInit {
  constructor(
    private readonly jobs: Jobs,
    private readonly clock: Clock,
  ) {}

  onModuleInit(): void {
    this.jobs.register(RELEASE_CERTIFICATE, (context) => this.print(context));
  }

  private async print({ actor, job, inOperator }: JobContext): Promise<{ documentId: string }> {
    const { operatorId } = actor;
    const releaseId = job.subjectId ?? '';
    const found = await inOperator(async (tx) => ({
      certificate: await loadCertificate(tx, operatorId, releaseId),
      made: await tx.document.findFirst({
        where: { operatorId, kind: RELEASE_CERTIFICATE, subjectId: releaseId },
        select: { id: true },
      }),
    }));
    // One release has one certificate: who asks again, and a job that begins again, find the one that was made.
    if (found.made !== null) return { documentId: found.made.id };
    const { certificate } = found;
    const document = await certificateInThread({ certificate, preparedBy: actor.fullName });
    await inOperator((tx) =>
      keepDocument(tx, operatorId, {
        ...document,
        id: job.id,
        kind: RELEASE_CERTIFICATE,
        subjectId: releaseId,
        fileName: fileNameOf(`release-${certificate.number}-${certificate.subject}`),
        createdById: actor.personId,
        createdAt: this.clock.now(),
      }),
    );
    return { documentId: job.id };
  }
}
