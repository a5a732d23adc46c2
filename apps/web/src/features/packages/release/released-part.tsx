import { useQuery } from '@tanstack/react-query';
import { Answered } from '../../../ui/messages/answered.js';
import { Certificate } from './certificate.js';
import { ReleaseNotePart } from './release-note.js';
import { releaseNoteQuery } from './release-queries.js';
import '../packages.css';

interface ReleasedPartProps {
  readonly packageId: string;
  readonly releaseId: string;
}

/** The release of a package as signed, with its certificate. */
export function ReleasedPart({ releaseId }: ReleasedPartProps) {
  const query = useQuery(releaseNoteQuery(releaseId));
  return (
    <Answered query={query} doing="Reading the release" lines={6}>
      {(note) => (
        <>
          <ReleaseNotePart note={note} />
          <Certificate releaseId={releaseId} number={note.number} />
        </>
      )}
    </Answered>
  );
}
