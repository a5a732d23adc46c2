import { instantAt } from '../scenario/instants.js';

/** The heading of a file of flights. */
export const HEADING =
  'registration,log_page,from,to,take_off_utc,landing_utc,touch_and_goes,starts,aborted_take_offs';

/** The instant of that minute, as a person types it into a spreadsheet. */
export const asTyped = (minutes: number) => instantAt(minutes).replace('T', ' ').replace('Z', '');

/** One line of such a file: one start, no touch-and-go. */
export const flightLine = (registration: string, page: string, takeOff: number, landing: number) =>
  `${registration},${page},VDL,KRN,${asTyped(takeOff)},${asTyped(landing)},0,1,0`;

/** The whole file. */
export const file = (...lines: string[]) => `${[HEADING, ...lines].join('\n')}\n`;
