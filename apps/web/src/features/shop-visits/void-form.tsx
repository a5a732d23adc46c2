import { type ActHeaders, useAct } from '../../server/act.js';
import { COMPONENTS_KEY } from '../../server/components.js';
import { SHOPS_KEY, type ShopVisit } from '../../server/shops/shop-records.js';
import { useActForm } from '../../ui/fields/act-form.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { announce } from '../../ui/messages/announcements.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { ActFrame } from './act-frame.js';

interface VoidFormProps {
  readonly id: string;
  readonly what: 'visit' | 'return';
  readonly consequence: string;
  readonly perform: (
    voiding: { readonly id: string; readonly reason: string },
    headers: ActHeaders,
  ) => Promise<ShopVisit>;
  readonly onClose: () => void;
}

/** Asks why before a visit or a return is voided. */
export function VoidForm({ id, what, consequence, perform, onClose }: VoidFormProps) {
  const act = useAct({
    perform,
    refresh: [SHOPS_KEY, COMPONENTS_KEY, ['history'], ['due']],
    onDone: () => {
      announce(`The ${what} is voided.`);
      onClose();
    },
  });
  const form = useActForm({
    start: { reason: '' },
    check: ({ reason }): Readonly<Record<string, string>> =>
      reason.trim() === '' ? { reason: 'Enter why it is voided' } : {},
    words: ({ reason }) => ({ id, reason: reason.trim() }),
    act,
  });
  return (
    <SheetDialog title={`Void the ${what}?`} open onClose={onClose}>
      <ActFrame form={form} act="Void">
        <p>{consequence}</p>
        <TextAreaField
          {...form.field('reason')}
          label="Reason"
          value={form.typed.reason}
          onChange={({ target }) => form.change({ reason: target.value })}
          autoFocus
        />
      </ActFrame>
    </SheetDialog>
  );
}
