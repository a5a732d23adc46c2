import type { Refusal } from '@strutbook/domain/refusals.js';
import { formatHours } from '@strutbook/domain/units/minutes.js';
import { instantToWire } from '../http/instants.js';
import { aboutField, type ProblemTable } from './problem-row.js';

type CountingRefusal = Extract<
  Refusal,
  {
    code:
      | 'RUN_NOT_AFTER_START'
      | 'RUN_TOO_LONG'
      | 'RUN_BEYOND_SPAN'
      | 'COUNTED_BEYOND_RUN'
      | 'READING_MISSING'
      | 'READING_NOT_ASKED'
      | 'COUNTER_RUNS_BACK'
      | 'COUNTER_BEYOND_TIME';
  }
>;

/** How what can't be of ground runs and counters is told. */
export const COUNTING_PROBLEMS: ProblemTable<CountingRefusal> = {
  RUN_NOT_AFTER_START: ({ startedAt, endedAt }) =>
    aboutField(422, 'End before start', {
      field: 'endedAt',
      reason: `The end at ${instantToWire(endedAt)} is not after the start at ${instantToWire(startedAt)}.`,
      fix: 'Enter both in UTC, the end later than the start.',
    }),
  RUN_TOO_LONG: ({ minutes, longest }) =>
    aboutField(422, 'The run is too long', {
      field: 'endedAt',
      reason: `The run would last ${minutes} minutes; at most ${longest} are taken for one run.`,
      fix: 'Check the dates of start and end.',
    }),
  RUN_BEYOND_SPAN: ({ minutes, span }) =>
    aboutField(422, 'It ran longer than it lasted', {
      field: 'runMinutes',
      reason: `From start to end ${span} minutes passed; ${minutes} are said to have been run.`,
      fix: 'Enter the minutes the engine ran, at most from start to end.',
    }),
  COUNTED_BEYOND_RUN: ({ minutes, runMinutes }) =>
    aboutField(422, 'More is counted than ran', {
      field: 'countedMinutes',
      reason: `${minutes} minutes are to be counted of ${runMinutes} that were run.`,
      fix: 'Enter what counts as time in service by the approved data, at most what was run.',
    }),
  READING_MISSING: ({ serial, direction }) =>
    aboutField(422, 'The counter was not read', {
      field: 'counterReading',
      reason: `Auxiliary power unit ${serial} counts by its own counter, and no reading tells what it showed when it ${direction === 'on' ? 'went on' : 'came off'}.`,
      fix: 'Read hours and starts off its counter and enter both.',
    }),
  READING_NOT_ASKED: ({ serial }) =>
    aboutField(422, 'This has no counter of its own', {
      field: 'counterReading',
      reason: `${serial} does not count by a counter of its own there.`,
      fix: 'Leave the reading out.',
    }),
  COUNTER_RUNS_BACK: ({ field, value, beside, at, besideAt }) => {
    const tell = (figure: number) => (field === 'minutes' ? formatHours(figure) : String(figure));
    return aboutField(422, 'A counter does not run back', {
      field,
      reason:
        `The counter cannot have shown ${tell(value)} at ${instantToWire(at)}: ` +
        `it showed ${tell(beside)} at ${instantToWire(besideAt)}.`,
      fix: 'Check the figure and the moment. If the counter was replaced, record the replacement first; if the other reading is wrong, correct it.',
    });
  },
  COUNTER_BEYOND_TIME: ({ minutes, passed, from, to }) =>
    aboutField(422, 'A counter does not run faster than time', {
      field: 'minutes',
      reason: `From ${instantToWire(from)} to ${instantToWire(to)} it would have run ${formatHours(minutes)}, and only ${formatHours(passed)} passed.`,
      fix: 'Check the figure and the moment, or correct the reading it is held against.',
    }),
};
