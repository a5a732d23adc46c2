import { parseMoment } from '../../format/utc-moment.js';
import { wireMinute } from '../../format/when.js';
import { useAct } from '../../server/act.js';
import { type NewTag, recordTag, SHOPS_KEY } from '../../server/shops/shop-records.js';
import { type Faults, useActForm } from '../../ui/fields/act-form.js';
import { MomentField } from '../../ui/fields/moment-field.js';
import { SelectField } from '../../ui/fields/select-field.js';
import { TextAreaField } from '../../ui/fields/text-area-field.js';
import { TextField } from '../../ui/fields/text-field.js';
import { announce } from '../../ui/messages/announcements.js';
import { SheetForm } from './sheet-form.js';

interface Typed {
  readonly status: string;
  readonly tagNumber: string;
  readonly reason: string;
  readonly certificate: string;
  readonly at: string;
}

const START: Typed = { status: '', tagNumber: '', reason: '', certificate: '', at: '' };

function check({ status, tagNumber, reason, certificate, at }: Typed): Faults {
  const moment = parseMoment(at);
  return {
    ...(status === '' ? { status: 'Choose what the tag says' } : {}),
    ...(tagNumber.trim() === '' ? { tagNumber: 'Enter the number of the tag' } : {}),
    ...(reason.trim() === '' ? { reason: 'Enter why' } : {}),
    ...(status === 'serviceable' && certificate.trim() === ''
      ? { certificate: 'Enter the release certificate it is serviceable by' }
      : {}),
    ...(moment.ok ? {} : { at: moment.reason }),
  };
}

/** A tag: serviceable, unserviceable or quarantine. The newest counts. */
export function TagForm({
  componentId,
  onDone,
}: {
  readonly componentId: string;
  readonly onDone: () => void;
}) {
  const act = useAct({
    perform: recordTag,
    refresh: [SHOPS_KEY, ['history']],
    onDone: ({ tagNumber }) => {
      announce(`Tag ${tagNumber} is recorded.`);
      onDone();
    },
  });
  const form = useActForm({
    start: START,
    check,
    words: ({ status, tagNumber, reason, certificate, at }: Typed): NewTag => {
      const moment = parseMoment(at);
      return {
        componentId,
        status: status as NewTag['status'],
        tagNumber: tagNumber.trim(),
        reason: reason.trim(),
        certificate: certificate.trim() === '' ? null : certificate.trim(),
        at: moment.ok ? wireMinute(moment.instant) : '',
      };
    },
    act,
  });
  const { typed, change, field } = form;
  return (
    <SheetForm form={form} act="Record the tag">
      <SelectField
        {...field('status')}
        label="The tag says"
        unchosen="Choose"
        options={[
          { value: 'unserviceable', label: 'Unserviceable' },
          { value: 'quarantine', label: 'Quarantine' },
          { value: 'serviceable', label: 'Serviceable' },
        ]}
        value={typed.status}
        onChange={({ target }) => change({ status: target.value })}
      />
      <TextField
        {...field('tagNumber')}
        label="Tag number"
        mono
        value={typed.tagNumber}
        onChange={({ target }) => change({ tagNumber: target.value })}
      />
      <TextAreaField
        {...field('reason')}
        label="Reason"
        value={typed.reason}
        onChange={({ target }) => change({ reason: target.value })}
      />
      <TextField
        {...field('certificate')}
        label="Release certificate"
        optional={typed.status !== 'serviceable'}
        mono
        value={typed.certificate}
        onChange={({ target }) => change({ certificate: target.value })}
      />
      <MomentField {...field('at')} label="Tagged" value={typed.at} onTyped={(at) => change({ at })} />
    </SheetForm>
  );
}
