import type { Desk } from './desk.js';
import type { FullRecord } from './full-record.js';

/** A dialog of the client: where it is, and how it is opened. */
export interface Opening {
  readonly name: string;
  readonly path: (record: FullRecord) => string;
  readonly open: (desk: Desk) => Promise<unknown>;
}

const flights = ({ airframe }: FullRecord): string => `/flights?airframe=${airframe.id}`;
const engine = ({ engineId }: FullRecord): string => `/register/components/${engineId}`;
const press = (name: string | RegExp) => (desk: Desk) => desk.button(name).first().click();

/** A dialog that a page of the register opens by its button. */
const adding = (what: string, page: string): Opening => ({
  name: `adding ${what}`,
  path: () => page,
  open: press(`Add ${what}`),
});

/** Every dialog that asks for something. */
export const DIALOGS: readonly Opening[] = [
  { name: 'the finder', path: () => '/positions', open: (desk) => desk.page.keyboard.press('Control+k') },
  { name: 'voiding a flight', path: flights, open: press(/^Void log page/) },
  { name: 'correcting a flight', path: flights, open: press(/^Correct log page/) },
  {
    name: 'positions that did not run',
    path: () => '/flights/enter',
    open: press(/^Positions that did not run/),
  },
  adding('an airframe type', '/register/airframe-types'),
  adding('an airframe', '/register/airframes'),
  adding('an engine model', '/register/engine-models'),
  adding('a life limit', '/register/life-limits'),
  adding('a location', '/register/locations'),
  adding('a component', '/register/components'),
  adding('a tool', '/tools'),
  {
    name: 'a calibration',
    path: ({ toolId }) => `/tools/${toolId}`,
    open: press('Record a calibration'),
  },
  {
    name: 'voiding a calibration',
    path: ({ toolId }) => `/tools/${toolId}`,
    open: press(/^Void calibration/),
  },
  adding('a requirement', '/requirements'),
  {
    name: 'a requirement that was met',
    path: ({ requirementId }) => `/requirements/${requirementId}`,
    open: press(/^It was met: 05-20-12C, ZZ-101/),
  },
  {
    name: 'voiding an accomplishment',
    path: ({ requirementId }) => `/requirements/${requirementId}`,
    open: press(/^Void what was met/),
  },
  { name: 'a revision of a procedure', path: () => '/procedures', open: press('Record a revision') },
  adding('a person', '/people'),
  adding('an authorisation', '/people'),
  { name: 'ending an authorisation', path: () => '/people', open: press(/^End .* of Lee Roe/) },
  { name: 'disabling a person', path: () => '/people', open: press('Disable Lee Roe') },
  { name: 'an opening balance', path: engine, open: press('Record an opening balance') },
  { name: 'a rating', path: engine, open: press('Record a rating') },
  { name: 'a shop visit', path: engine, open: press('Record an overhaul, shop visit or repair') },
  { name: 'moving to a location', path: engine, open: press('Move to a location') },
];
