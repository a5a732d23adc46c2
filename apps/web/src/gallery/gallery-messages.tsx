import { noAnswer, ProblemError } from '@strutbook/api-client/problem-error.js';
import { useState } from 'react';
import { Button } from '../ui/actions/button.js';
import { TextField } from '../ui/fields/text-field.js';
import { announce } from '../ui/messages/announcements.js';
import { ConflictPanel } from '../ui/messages/conflict-panel.js';
import { EmptyState } from '../ui/messages/empty-state.js';
import { Checking, Loading } from '../ui/messages/loading.js';
import { Notice } from '../ui/messages/notice.js';
import { OfflineBar } from '../ui/messages/offline-bar.js';
import { ProblemPanel } from '../ui/messages/problem-panel.js';
import { SheetDialog } from '../ui/overlay/sheet-dialog.js';
import { Tabs } from '../ui/overlay/tabs.js';
import { GallerySection } from './gallery-section.js';

const refused = new ProblemError({
  type: 'about:blank',
  title: 'The change is refused',
  status: 422,
  detail: 'KT-655 cannot go in at position 3: KT-377 is still there.',
  code: 'SLOT_OCCUPIED',
  fields: [
    {
      field: 'outgoingSerial',
      reason: 'KT-377 is installed at position 3.',
      fix: 'Record its removal in the same change.',
    },
  ],
  requestId: '01J9-7F3K-22',
});

const LINES = [
  { term: 'Reading', yours: '112.4 N·m', onRecord: '111.9 N·m', differs: true },
  { term: 'Tool', yours: 'TW-014', onRecord: 'TW-014', differs: false },
];

/** Messages in every state. */
export function GalleryMessages() {
  return (
    <GallerySection title="Messages">
      <OfflineBar since={29_904_365} dataFrom={29_904_358} />
      <div className="gallery-columns">
        <ProblemPanel error={refused} doing="Recording the change" />
        <ProblemPanel error={noAnswer()} onRetry={() => undefined} />
        <EmptyState action={<Button>Add a flight</Button>}>No flights after 11 Nov.</EmptyState>
        <div className="stack">
          <Loading label="Reading the positions" />
          <Checking />
        </div>
        <Notice kind="warning">
          Keep clear of the intake. The starter can turn the engine without notice.
        </Notice>
        <Notice kind="caution">Cap the fuel line at once. Dirt in the line damages the pump.</Notice>
        <Notice kind="note">
          The torque at the fastener is lower than the wrench shows when an extension is fitted.
        </Notice>
      </div>
      <ConflictPanel
        lines={LINES}
        recordedBy="R. Kay, 11 Nov 2026 14:05Z"
        onRecordMine={() => undefined}
        onDiscardMine={() => undefined}
      />
    </GallerySection>
  );
}

/** Dialogs, sheets, tabs and announcements. */
export function GalleryOverlays() {
  const [open, setOpen] = useState<'dialog' | 'sheet' | 'must' | null>(null);
  const [tab, setTab] = useState('limits');
  const close = () => setOpen(null);
  return (
    <GallerySection title="Dialogs and tabs">
      <div className="row">
        <Button onClick={() => setOpen('dialog')}>Open a dialog</Button>
        <Button onClick={() => setOpen('sheet')}>Open a sheet</Button>
        <Button onClick={() => setOpen('must')}>Open a question</Button>
        <Button onClick={() => announce('2 flights saved. They add 5:12 h to KT-442.')}>Announce</Button>
      </div>
      <SheetDialog
        title={open === 'sheet' ? 'Record a finding' : 'Void the flight of 2 Nov?'}
        open={open !== null}
        shape={open === 'sheet' ? 'sheet' : 'dialog'}
        mustAnswer={open === 'must'}
        onClose={close}
        actions={
          <>
            <Button kind="primary" onClick={close}>
              Void the flight
            </Button>
            <Button onClick={close}>Keep it</Button>
          </>
        }
      >
        <p>The line stays on record, struck through, with your reason.</p>
        <TextField label="Reason for this entry" autoFocus />
      </SheetDialog>
      <Tabs
        label="Engine KT-442"
        selected={tab}
        onSelect={setTab}
        parts={[
          { id: 'limits', title: 'Limits', count: 12, content: <p>The limits of KT-442.</p> },
          { id: 'parts', title: 'Parts', count: 31, content: <p>The parts of KT-442.</p> },
          { id: 'findings', title: 'Findings', content: <p>Nothing found.</p> },
        ]}
      />
    </GallerySection>
  );
}
