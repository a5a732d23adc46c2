import type { Locator } from 'playwright-core';
import type { Desk } from './desk.js';

/** Tablet upright, and on its side. */
export const UPRIGHT = { width: 834, height: 1194, touch: true } as const;
export const SIDEWAYS = { width: 1194, height: 834, touch: true } as const;

/** How a person proves who signs. */
export interface Proof {
  readonly method: 'PIN' | 'password';
  readonly secret: string;
}

/** The fields of a capture by their labels, and what is typed into each. */
export type Filled = Readonly<Record<string, string>>;

/** A tablet at the aircraft: a package worked step by step, with fingers. */
export class StepTablet {
  constructor(readonly desk: Desk) {}

  get page() {
    return this.desk.page;
  }

  /** The panel of a step that is open. */
  panel(number: number): Locator {
    return this.page.getByRole('region', { name: `Step ${number}`, exact: true });
  }

  /** One thing that the open step captures. */
  capture(label: string): Locator {
    return this.page.getByRole('region', { name: label, exact: true });
  }

  /** Opens a step by its row; on a narrow screen its lane is shown first. */
  async openStep(title: string): Promise<void> {
    const row = this.page.locator('.step-row', { hasText: title });
    if (!(await row.isVisible()))
      for (const lane of await this.page.locator('.lane-switch button').all()) {
        await lane.tap();
        if (await row.isVisible()) break;
      }
    if ((await row.getAttribute('aria-expanded')) !== 'true') await row.tap();
    await this.page.locator('.step-open').filter({ hasText: title }).locator('.step-panel').waitFor();
  }

  /** Fills the form of a capture and records it. `chosen` are the words of choices to tap. */
  async record(label: string, filled: Filled, chosen: readonly string[] = []): Promise<void> {
    const part = this.capture(label);
    const again = part.getByRole('button', { name: /^Enter (again|anew)$/ });
    if (await again.isVisible()) await again.tap();
    const before = await part.locator('.attempt').count();
    for (const [field, typed] of Object.entries(filled))
      await part.getByLabel(field, { exact: true }).fill(typed);
    for (const choice of chosen) await part.locator('.choice-option', { hasText: choice }).first().tap();
    await part.getByRole('button', { name: /^Record/ }).tap();
    await part.locator('.attempt').nth(before).waitFor();
    await this.desk.settled();
  }

  /** Records the serial read from a plate at position 1. */
  plate(label: string, serial: string): Promise<void> {
    return this.record(label, { 'Position you stand at': '1', 'Serial on the data plate': serial });
  }

  /** Records papers that agree with the plate. */
  papers(serial: string): Promise<void> {
    const filled = {
      'Serial on the data plate': serial,
      'Serial on the release document': serial,
      'Number of the release document': 'F1-0815',
    };
    return this.record('Release document against the plate', filled, ['Serviceable']);
  }

  /** Records a leak check of so many minutes without a leak. */
  leakCheck(minutes: string): Promise<void> {
    return this.record('Leak check', { 'Minutes looked': minutes, Power: 'idle' }, ['No leak']);
  }

  /** Takes a wrench for the torques that follow. */
  async takeWrench(serial: string): Promise<void> {
    const choice = this.page.getByLabel('Torque wrench', { exact: true });
    const option = choice.locator('option', { hasText: serial });
    await choice.selectOption((await option.getAttribute('value')) ?? '');
  }

  /** Types a torque on the page's own keys, and ends with Done. */
  async keyIn(torque: string): Promise<void> {
    const keypad = this.page.getByRole('group', { name: 'Keypad for: Wrench' });
    for (const key of torque) await keypad.getByRole('button', { name: key, exact: true }).tap();
    await keypad.getByRole('button', { name: 'Done' }).tap();
  }

  /** Where the torque of the bolt in turn is typed. */
  wrench(): Locator {
    return this.page.getByLabel(/^Wrench, bolt \d, /);
  }

  /** Types a torque on a keyboard, key by key, and leaves the field. */
  async type(torque: string): Promise<void> {
    await this.wrench().fill('');
    await this.wrench().pressSequentially(torque);
    await this.wrench().blur();
  }

  /** Records what is typed for a bolt and waits for it among the attempts. */
  async recordTorque(button: string | RegExp): Promise<void> {
    const attempts = this.capture('Forward mount bolt').locator('.attempt');
    const before = await attempts.count();
    await this.desk.button(button).tap();
    await attempts.nth(before).waitFor();
    await this.desk.settled();
  }

  /** Fills the sheet of a signature; `signInName` is a second person's at this tablet. */
  async fillSheet(proof: Proof, signInName?: string): Promise<Locator> {
    const sheet = this.page.getByRole('dialog');
    if (signInName !== undefined) {
      await sheet.getByLabel('Their sign-in name').fill(signInName);
      await sheet.getByLabel('Their sign-in name').blur();
    }
    await sheet.locator('blockquote').waitFor();
    await sheet.locator('.choice-option', { hasText: proof.method === 'PIN' ? 'PIN' : 'Password' }).tap();
    await sheet
      .getByLabel(signInName === undefined ? `Your ${proof.method}, again` : `Their ${proof.method}`, {
        exact: true,
      })
      .fill(proof.secret);
    return sheet;
  }

  /** Signs in the sheet that is open, and waits until it is gone. Answers the words that were signed. */
  async signSheet(proof: Proof, signInName?: string): Promise<string> {
    const sheet = await this.fillSheet(proof, signInName);
    const words = await sheet.locator('blockquote').innerText();
    await sheet.getByRole('button', { name: 'Sign these words' }).tap();
    await sheet.waitFor({ state: 'detached' });
    await this.desk.settled();
    return words;
  }

  /** Signs the open step as done. */
  async sign(proof: Proof): Promise<string> {
    await this.desk.button('Sign').tap();
    return this.signSheet(proof);
  }

  /** A second person signs the inspection of the open step. */
  async inspect(proof: Proof, signInName: string): Promise<string> {
    await this.desk.button('Another person signs here').tap();
    return this.signSheet(proof, signInName);
  }
}
