import { useQuery } from '@tanstack/react-query';
import { calendarDate } from '../../../format/utc-date.js';
import { heldKey, type RequirementStatus, requirementsOnQuery } from '../../../server/requirements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { markOf } from '../../../ui/status/near.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { isOrdered, type NamedDuty, orderOn } from './opening-draft.js';
import type { Opening } from './use-opening.js';
import type { SectionProps } from './work-section.js';

/** The requirement on the narrowest thing it is due on. */
function named({ requirementId, componentId, positionId, airframeId }: RequirementStatus): NamedDuty {
  if (componentId !== null) return { requirementId, componentId };
  if (positionId !== null) return { requirementId, positionId };
  return { requirementId, ...(airframeId === null ? {} : { airframeId }) };
}

interface RowProps {
  readonly duty: RequirementStatus;
  readonly chosen: boolean;
  readonly onChoose: (chosen: boolean) => void;
}

function Row({ duty, chosen, onChoose }: RowProps) {
  const { code, title, subject, document, revision, status, reason, projectedOn } = duty;
  return (
    <li>
      <label className="duty">
        <input type="checkbox" checked={chosen} onChange={({ target }) => onChoose(target.checked)} />
        <span>
          <span className="duty-name">
            <span className="serial">{code}</span> {title}
          </span>
          <span className="quiet small">
            {subject}. {document}, revision {revision}
          </span>
        </span>
        <span className="duty-standing">
          <StatusMark status={markOf(status)} />
          <span className="quiet small">
            {reason ?? (projectedOn === null ? '' : `expected ${calendarDate(projectedOn)}`)}
          </span>
        </span>
      </label>
    </li>
  );
}

interface PartProps {
  readonly legend: string;
  readonly words: string;
  readonly duties: readonly RequirementStatus[];
  readonly opening: Opening;
}

function Part({ legend, words, duties, opening: { draft, set } }: PartProps) {
  if (duties.length === 0) return null;
  return (
    <fieldset className="package-part">
      <legend>{legend}</legend>
      <p className="quiet">{words}</p>
      <ul className="plain-list duties">
        {duties.map((duty) => {
          const name = named(duty);
          const key = heldKey(name);
          const without = draft.duties.filter((entry) => heldKey(entry) !== key);
          return (
            <Row
              key={key}
              duty={duty}
              chosen={without.length < draft.duties.length}
              onChoose={(chosen) => set({ duties: chosen ? [...without, name] : without })}
            />
          );
        })}
      </ul>
    </fieldset>
  );
}

const RECORDED = 'The release records them as done at the counters of that instant.';

/** The requirements that this work will close when it is released: those of what the order is about first. */
export function RequirementsSection({ opening }: SectionProps) {
  const { draft, place } = opening;
  const query = useQuery(requirementsOnQuery(orderOn(draft)));
  const ordered = isOrdered(draft) && place !== null;
  const isHere = ({ componentId, positionId }: RequirementStatus): boolean =>
    (place?.there != null && componentId === place.there.id) ||
    (positionId !== null && positionId === place?.positionId);
  return (
    <Answered query={query} doing="Reading the requirements" lines={4}>
      {(duties) =>
        duties.length === 0 ? (
          <EmptyState>
            No requirement applies here. That says only that none is recorded: what applies is for a competent
            person to assess.
          </EmptyState>
        ) : (
          <>
            <Part
              legend={
                ordered
                  ? `To be closed by this work, at ${place.label.replace(/^Position/, 'position')}`
                  : 'To be closed by this work'
              }
              words={RECORDED}
              duties={ordered ? duties.filter(isHere) : duties}
              opening={opening}
            />
            {ordered && (
              <Part
                legend="Of everything else"
                words={`Other positions, their engines, and parts by their serials. Look at the serial before one is chosen. ${RECORDED}`}
                duties={duties.filter((duty) => !isHere(duty))}
                opening={opening}
              />
            )}
          </>
        )
      }
    </Answered>
  );
}
