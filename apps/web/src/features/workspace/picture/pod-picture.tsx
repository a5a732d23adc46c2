import type { PodPlace } from '@strutbook/domain/work/step.js';
import { isPodPlace, podPlaceWords } from '../../../format/pod-place-words.js';
import { FrontView, NoseView } from './other-views.js';
import { SideView } from './side-view.js';
import './picture.css';

/** Where left and right halves matter. */
const WITH_FRONT: ReadonlySet<string> = new Set(['inlet', 'fan-cowls', 'reverser']);

function viewWords(place: string): string {
  if (place === 'cockpit') return 'The airframe from the left';
  if (place === 'stand') return 'The engine on its stand, from the left';
  return `The pod on its strut, from the ${place === 'core-right' ? 'right' : 'left'}${
    WITH_FRONT.has(place) ? ' and from the front' : ''
  }`;
}

/** Where a group of steps is: the pod with the place drawn in ink. */
export function PodPicture({ place }: { readonly place: PodPlace }) {
  if (!isPodPlace(place)) return <p className="pod-caption">{podPlaceWords(place)}</p>;
  const words = `${viewWords(place)}; marked: ${podPlaceWords(place).toLowerCase()}`;
  return (
    <figure className="pod-figure">
      <svg
        className="pod-picture"
        viewBox={WITH_FRONT.has(place) ? '0 0 640 204' : '0 0 400 204'}
        role="img"
        aria-label={words}
      >
        {place === 'cockpit' ? (
          <NoseView />
        ) : (
          <SideView place={place} from={place === 'core-right' ? 'right' : 'left'} />
        )}
        {WITH_FRONT.has(place) && (
          <g transform="translate(426 0)">
            <FrontView place={place} />
          </g>
        )}
      </svg>
      <figcaption className="pod-caption">{podPlaceWords(place)}</figcaption>
    </figure>
  );
}
