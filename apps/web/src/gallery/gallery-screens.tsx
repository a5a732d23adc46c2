import { ChangeConflict } from '../features/changes/change-conflict.js';
import { GallerySection } from './gallery-section.js';
import { SCREEN_STATES } from './states/screen-states.js';
import { addressOf } from './states/stub-server.js';
import { PREVIEW } from './states/work-data.js';

const now = {
  ...PREVIEW,
  incoming: PREVIEW.incoming && {
    ...PREVIEW.incoming,
    sinceNew: { minutes: 918_093, cycles: { units: 23_862, denominator: 2 } },
  },
};

/** Each screen in each state, at its own address, with what the server would say. */
export function GalleryScreens() {
  return (
    <>
      <GallerySection title="Screens in their states">
        <ul>
          {SCREEN_STATES.map((state) => (
            <li key={state.name}>
              <a href={addressOf(state)}>{state.title}</a>
            </li>
          ))}
        </ul>
      </GallerySection>
      <GallerySection title="A change that the records overtook">
        <ChangeConflict mine={PREVIEW} now={now} onRecord={() => undefined} onDiscard={() => undefined} />
      </GallerySection>
    </>
  );
}
