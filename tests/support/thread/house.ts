import type { Browser } from 'playwright-core';
import { chromium } from '../browser.js';
import { hire, type Office, openOffice, type Staff } from '../scenario/office.js';
import { type Credentials, Desk, type DeskOptions, desksInUse } from './desk.js';

/** An operator with the client served to real browsers. */
export interface House extends Office {
  readonly browser: Browser;
}

/** Starts database, API and browser. */
export async function openHouse(): Promise<House> {
  const office = await openOffice();
  try {
    const browser = await chromium();
    const close = async () => {
      for (const desk of desksInUse()) await desk.leave();
      await browser.close();
      await office.close();
    };
    return { ...office, browser, close };
  } catch (error) {
    await office.close();
    throw error;
  }
}

/** Adds a person, who need not change the password first and is authorised for all that the roles may sign. */
export async function engage(house: House, person: Staff): Promise<Credentials> {
  const { signInName, password, operatorCode } = await hire(house, person);
  return { signInName, password, operatorCode };
}

/** A desk of the house where nobody has signed in yet. */
export function deskIn({ browser, api }: House, options?: DeskOptions): Promise<Desk> {
  return Desk.take(browser, api.baseUrl, options);
}
