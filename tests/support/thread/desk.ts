import { createRequire } from 'node:module';
import type { Browser, BrowserContext, ConsoleMessage, Locator, Page } from 'playwright-core';
import type { Founded } from '../api.js';

/** How a desk's browser is set up. */
export interface DeskOptions {
  readonly width?: number;
  readonly height?: number;
  readonly theme?: 'light' | 'dark';
  /** Device pixels for one of the page's: 2 with half the width is a zoom of 200 %. */
  readonly scale?: number;
  /** A tablet: fingers, no mouse. */
  readonly touch?: boolean;
}

export type Credentials = Pick<Founded, 'signInName' | 'password' | 'operatorCode'>;

const axeFile = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** What the server answered is the test's own affair; only what the page itself did wrong is a fault. */
const isFault = (message: ConsoleMessage): boolean =>
  message.type() === 'error' && !message.text().startsWith('Failed to load resource');

const open = new Set<Desk>();

/** The desks in use, for pictures of what they show when a test fails. */
export const desksInUse = (): readonly Desk[] => [...open];

/** One person's browser, with a session and a page of its own. */
export class Desk {
  /** Errors the page threw, and what the content security policy or the browser held against it. */
  readonly faults: string[] = [];

  private constructor(
    readonly context: BrowserContext,
    readonly page: Page,
    readonly baseUrl: string,
  ) {
    page.on('pageerror', (error) => this.faults.push(`${page.url()}: ${error.message}`));
    page.on('console', (message) => {
      if (isFault(message)) this.faults.push(`${page.url()}: ${message.text()}`);
    });
  }

  static async take(browser: Browser, baseUrl: string, options: DeskOptions = {}): Promise<Desk> {
    const { width = 1280, height = 900, theme = 'light', scale = 1, touch = false } = options;
    const context = await browser.newContext({
      baseURL: baseUrl,
      viewport: { width, height },
      deviceScaleFactor: scale,
      hasTouch: touch,
      colorScheme: theme,
      reducedMotion: 'reduce',
      acceptDownloads: true,
    });
    // Put there by the browser, not by the page: the page's own policy stays in force.
    await context.addInitScript({ path: axeFile });
    context.setDefaultTimeout(15_000);
    const desk = new Desk(context, await context.newPage(), baseUrl);
    open.add(desk);
    return desk;
  }

  /** Signs in at the door, as a person does. */
  async signIn({ signInName, password }: Credentials): Promise<void> {
    await this.page.goto('/');
    await this.page.getByLabel('Sign-in name').fill(signInName);
    await this.page.getByLabel('Password', { exact: true }).fill(password);
    await this.page.getByRole('button', { name: 'Sign in' }).click();
    await this.page.getByRole('heading', { level: 1, name: 'Positions' }).waitFor();
  }

  /** Signs in without the door's form. Throws when it is refused. */
  async enter({ signInName, password, operatorCode }: Credentials): Promise<void> {
    const answer = await this.context.request.post('/api/session', {
      data: { signInName, password, operatorCode },
    });
    if (!answer.ok()) throw new Error(`sign-in refused: ${answer.status()} ${await answer.text()}`);
  }

  /** Opens an address and waits until the page shows what it read. */
  async go(path: string): Promise<void> {
    await this.page.goto(path);
    await this.settled();
  }

  /** Waits until nothing is being read any more. */
  async settled(): Promise<void> {
    await this.page.getByRole('heading', { level: 1 }).first().waitFor();
    await this.page.waitForFunction(
      () => document.querySelector('.loading, .checking-corner, [aria-busy="true"]') === null,
    );
  }

  /** Follows a place of the top bar. */
  async goToPlace(name: string): Promise<void> {
    await this.page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name }).click();
    await this.settled();
  }

  /** The control with exactly this label. */
  field(label: string): Locator {
    return this.page.getByLabel(label, { exact: true });
  }

  button(name: string | RegExp): Locator {
    return this.page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });
  }

  link(name: string | RegExp): Locator {
    return this.page.getByRole('link', typeof name === 'string' ? { name, exact: true } : { name });
  }

  /** The message that stands beside a control; null when it has none. */
  async saidBeside(control: Locator): Promise<string | null> {
    if ((await control.getAttribute('aria-invalid')) !== 'true') return null;
    const ids = (await control.getAttribute('aria-describedby')) ?? '';
    const message = ids.split(' ').find((id) => id.endsWith('-error'));
    return message === undefined ? null : this.page.locator(`[id="${message}"]`).innerText();
  }

  async leave(): Promise<void> {
    open.delete(this);
    await this.context.close();
  }
}
