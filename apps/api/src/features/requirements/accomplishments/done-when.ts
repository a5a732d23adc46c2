import { startOfDay } from '@strutbook/domain/units/calendar.js';
import { dayOf, fromInstant, momentOf } from '../../../platform/http/instants.js';
import { refuse } from '../../../platform/problems/refusal.error.js';
import { zoneOf } from '../../../records/requirements/marks.js';
import type { Subject } from '../../../records/requirements/subjects.js';
import { dayIn, offsetAtStartOf } from '../../../records/stays/day-zone.js';

/**
 * When a requirement was met: the instant, and the calendar day it counts from. Of a day alone the counters are read at
 * its beginning, so that what was flown on it counts against what is due next. Refuses: INVALID_FIELDS.
 */
export function doneWhen(
  { at, on }: { readonly at?: string | null; readonly on?: string | null },
  subject: Subject,
): { readonly at: Date; readonly doneOn: Date } {
  const zone = zoneOf(subject);
  const instant = at == null ? null : momentOf(at);
  const day = on ?? (instant === null ? null : dayIn(zone, instant));
  if ((at == null) === (on == null) || day === null)
    return refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'on',
          reason: 'It was met at an instant or on a day.',
          fix: 'Give either at or on.',
        },
      ],
    });
  return { at: instant ?? fromInstant(startOfDay(day, offsetAtStartOf(zone, day))), doneOn: dayOf(day) };
}
