import type { Desk } from './desk.js';

/** Opens an engine change at position 1 by the form, part after part, with fingers. Answers its number. */
export async function openChangeByForm(desk: Desk, requirement: string): Promise<string> {
  const { page } = desk;
  const next = () => desk.button('Continue').tap();
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Work' }).tap();
  await desk.link('Open a package').tap();
  await page.getByRole('heading', { level: 2, name: '1 Work' }).waitFor();
  await desk.field('Kind of work').selectOption({ label: 'Engine change' });
  await desk.field('Airframe').selectOption({ label: 'ZZ-101, Veldt Aircraft ZZ-T2' });
  await page.getByLabel(/^Reference/).fill('WO-4711');
  await next();
  await desk.field('Position').selectOption({ label: 'Position 1: ZZ-E1' });
  await desk.field('Where it goes').selectOption({ label: 'Store (store)' });
  await desk.field('Serial that goes on').fill('ZZ-E3');
  await page.getByRole('option', { name: /^ZZ-E3/ }).tap();
  await desk.field('Why it is changed').fill('Vibration above the limit');
  await next();
  await desk.field('Procedure').selectOption({ index: 1 });
  await next();
  await page.getByRole('checkbox', { name: new RegExp(`${requirement}.*ZZ-101`) }).tap();
  await next();
  await page.getByText(/ZZ-E1 comes off, goes to Store\..*ZZ-E3 goes on/).waitFor();
  await desk.button('Open the package').tap();
  const heading = page.getByRole('heading', { level: 1, name: /^Change EC-\d+/ });
  await heading.waitFor();
  return /EC-\d+/.exec(await heading.innerText())?.[0] ?? '';
}

/** Copies a block of cells, as a spreadsheet does, and pastes it into the grid of flights. */
export async function pasteFlights(desk: Desk, rows: readonly (readonly string[])[]): Promise<void> {
  await desk.context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const block = rows.map((row) => row.join('\t')).join('\n');
  await desk.page.evaluate((text) => navigator.clipboard.writeText(text), block);
  await desk.field('Log page, row 1').focus();
  await desk.page.keyboard.press('Control+V');
}
