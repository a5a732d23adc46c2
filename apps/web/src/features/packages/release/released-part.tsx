import { useQuery } from '@tanstack/react-query';
import { Answered } from '../../../ui/messages/answered.js';
import { Certificate } from './certificate.js';
import { ReleaseNotePart } from './release-note.js';
import { releaseNoteQuery } from './release-queries.js';
import '../packages.css';

/** The release of a package as signed, with its certificate. */
export function ReleasedPart({ releaseId }: { readonly releaseId: string }) {
  const query = useQuery(releaseNoteQuery(releaseId));
  return (
    <Answered query={query} doing="Reading the release" lines={6}>
      {(note) => (
        <>
          <ReleaseNotePart note={note} />
          <Certificate certificate={note.certificate} number={note.number} />
        </>
      )}
    </Answered>
  );
}
