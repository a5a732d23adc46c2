import { ThemeSwitch } from '../app/theme-switch.js';
import { PositionBoard } from '../ui/aircraft/position-board.js';
import { Announcements } from '../ui/messages/announcements.js';
import { PageHeading } from '../ui/page/page-heading.js';
import { BOARDS } from './boards.js';
import { GalleryActions, GalleryFields } from './gallery-fields.js';
import { GalleryMessages, GalleryOverlays } from './gallery-messages.js';
import { GalleryPrint, GalleryStatuses, GalleryTables } from './gallery-records.js';
import { GalleryScreens } from './gallery-screens.js';
import { GallerySection } from './gallery-section.js';
import '../app/shell.css';
import '../ui/page/page.css';
import './gallery.css';

/** Every part of the client in every state, for eyes and for checks. Left out of the product's build. */
export function GalleryPage() {
  return (
    <main className="page">
      <PageHeading title="Gallery" below={<ThemeSwitch />} />
      {BOARDS.map(({ registration, what, positions }) => (
        <GallerySection key={registration} title={`Airframe ${registration}: ${what}`}>
          <PositionBoard registration={registration} positions={positions} />
        </GallerySection>
      ))}
      <GalleryStatuses />
      <GalleryTables />
      <GalleryActions />
      <GalleryFields />
      <GalleryMessages />
      <GalleryOverlays />
      <GalleryPrint />
      <GalleryScreens />
      <Announcements />
    </main>
  );
}
