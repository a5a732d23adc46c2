import { parseDate, parseMoment } from '../../format/utc-moment.js';
import { wireMinute } from '../../format/when.js';
import { useAct } from '../../server/act.js';
import { type NewPreservation, recordPreservation, SHOPS_KEY } from '../../server/shops/shop-records.js';
import { type Faults, useActForm } from '../../ui/fields/act-form.js';
import { MomentField } from '../../ui/fields/moment-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { announce } from '../../ui/messages/announcements.js';
import { SheetForm } from './sheet-form.js';

interface Typed {
  readonly at: string;
  readonly method: string;
  readonly goodUntil: string;
  readonly document: string;
}

const START: Typed = { at: '', method: '', goodUntil: '', document: '' };

function check({ at, method, goodUntil, document }: Typed): Faults {
  const [moment, day] = [parseMoment(at), parseDate(goodUntil)];
  return {
    ...(moment.ok ? {} : { at: moment.reason }),
    ...(method.trim() === '' ? { method: 'Enter how it was preserved' } : {}),
    ...(day.ok ? {} : { goodUntil: day.reason }),
    ...(document.trim() === '' ? { document: 'Enter the document it is preserved by' } : {}),
  };
}

/** How a component was preserved, and until when that holds. */
export function PreservationForm({
  componentId,
  onDone,
}: {
  readonly componentId: string;
  readonly onDone: () => void;
}) {
  const act = useAct({
    perform: recordPreservation,
    refresh: [SHOPS_KEY, ['history']],
    onDone: () => {
      announce('The preservation is recorded.');
      onDone();
    },
  });
  const form = useActForm({
    start: START,
    check,
    words: ({ at, method, goodUntil, document }: Typed): NewPreservation => {
      const [moment, day] = [parseMoment(at), parseDate(goodUntil)];
      return {
        componentId,
        at: moment.ok ? wireMinute(moment.instant) : '',
        method: method.trim(),
        goodUntil: day.ok ? day.date : '',
        document: document.trim(),
      };
    },
    act,
  });
  const { typed, change, field } = form;
  return (
    <SheetForm form={form} act="Record the preservation">
      <MomentField {...field('at')} label="Preserved" value={typed.at} onTyped={(at) => change({ at })} />
      <TextField
        {...field('method')}
        label="Method"
        value={typed.method}
        onChange={({ target }) => change({ method: target.value })}
      />
      <TextField
        {...field('goodUntil')}
        label="Good until"
        hint="The last day it holds, as 2026-11-30"
        mono
        value={typed.goodUntil}
        onChange={({ target }) => change({ goodUntil: target.value })}
      />
      <TextField
        {...field('document')}
        label="Document"
        value={typed.document}
        onChange={({ target }) => change({ document: target.value })}
      />
    </SheetForm>
  );
}
