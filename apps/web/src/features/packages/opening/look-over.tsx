import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { counted } from '../../../format/counts.js';
import { packageKind } from '../../../format/package-words.js';
import { componentQuery } from '../../../server/components.js';
import { airframesQuery } from '../../../server/fleet.js';
import { proceduresForQuery } from '../../../server/procedures.js';
import { Button } from '../../../ui/actions/button.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { SerialText } from '../../../ui/status/serial-text.js';
import { isOrdered, type Section } from './opening-draft.js';
import { openingId } from './opening-ids.js';
import type { Opening } from './use-opening.js';

/** The registration or the serial the work is on. */
function useSubject({ draft: { subject, airframeId, componentId } }: Opening): string {
  const airframes = useQuery(airframesQuery).data ?? [];
  const component = useQuery(componentQuery(subject === 'component' ? componentId : '')).data;
  if (subject === 'component') return component?.serialNumber ?? '';
  return airframes.find(({ id }) => id === airframeId)?.registration ?? '';
}

/** 'Engine change, position 3 of ZZ-417'. No serial: the title stays as it is when the order is amended. */
export function useSuggestedTitle(opening: Opening): string {
  const { draft, place } = opening;
  const subject = useSubject(opening);
  if (!isOrdered(draft)) return `${packageKind(draft.kind)} of ${subject}`;
  const [where] = (place?.label ?? '').split(':');
  return `${packageKind(draft.kind)}, ${(where ?? '').replace(/^Position/, 'position')} of ${subject}`;
}

interface PartProps {
  readonly title: string;
  readonly section: Section;
  readonly opening: Opening;
  readonly children: ReactNode;
}

function Part({ title, section, opening, children }: PartProps) {
  return (
    <div className="look-part">
      <dt>{title}</dt>
      <dd>{children}</dd>
      <dd>
        <Button
          kind="quiet"
          aria-label={`Change: ${title.toLowerCase()}`}
          onClick={() => opening.goTo(section)}
        >
          Change
        </Button>
      </dd>
    </div>
  );
}

function OrderLines({ opening: { draft, place } }: { readonly opening: Opening }) {
  const { putsOn, incomingSerial, ratingCode, removedTo, reason } = draft.order;
  return (
    <>
      {place?.label.split(':')[0]}.{' '}
      {place?.there == null ? (
        'Nothing comes off.'
      ) : (
        <>
          <SerialText>{place.there.serialNumber}</SerialText> comes off, goes to {removedTo}.
        </>
      )}{' '}
      {putsOn ? (
        <>
          <SerialText>{incomingSerial}</SerialText> goes on{ratingCode !== '' && `, rating ${ratingCode}`}.
        </>
      ) : (
        'Nothing goes on.'
      )}
      <br />
      {reason}
    </>
  );
}

function StepsLine({ opening: { draft } }: { readonly opening: Opening }) {
  const procedures = useQuery(proceduresForQuery(draft.kind)).data ?? [];
  if (draft.stepsFrom === 'own') {
    const own = counted(draft.ownSteps.length, 'step of our own', 'steps of our own');
    return isOrdered(draft) ? `Those that make the order, and ${own}` : own;
  }
  const found = procedures.find(({ id }) => id === draft.procedureId);
  if (found === undefined) return 'Not chosen';
  return `${counted(found.steps, 'step')} from ${found.title}, revision ${found.revision}; ${found.document}, revision ${found.documentRevision}`;
}

/** All that was chosen, and the title under which the package is opened. */
export function LookOver({ opening }: { readonly opening: Opening }) {
  const { draft, set, said } = opening;
  const subject = useSubject(opening);
  const suggested = useSuggestedTitle(opening);
  return (
    <>
      <dl className="look-over">
        <Part title="Work" section="work" opening={opening}>
          {packageKind(draft.kind)} on <SerialText>{subject}</SerialText>
          {draft.reference.trim() !== '' && `, reference ${draft.reference.trim()}`}
        </Part>
        {isOrdered(draft) && (
          <Part title="Order" section="order" opening={opening}>
            <OrderLines opening={opening} />
          </Part>
        )}
        <Part title="Steps" section="steps" opening={opening}>
          <StepsLine opening={opening} />
        </Part>
        <Part title="Requirements" section="requirements" opening={opening}>
          {draft.duties.length === 0
            ? 'None is closed by it'
            : `${counted(draft.duties.length, 'requirement')} closed by it`}
        </Part>
      </dl>
      <TextField
        id={openingId('title')}
        label="Title"
        hint="As it stands in lists, in what is signed and on the certificate. It stays when the order is amended: serials stand in the order."
        maxLength={200}
        value={draft.title ?? suggested}
        onChange={({ target }) => set({ title: target.value })}
        error={said('title')}
      />
    </>
  );
}
