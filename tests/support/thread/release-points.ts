import type { StepTablet } from './step-tablet.js';

const points = (tablet: StepTablet) => tablet.page.locator('.objection-blocking');

/** What blocks the release of a package, as its check reads on the page. */
export async function blocksOf(tablet: StepTablet, packageId: string): Promise<readonly string[]> {
  await tablet.desk.go(`/packages/${packageId}/release-check`);
  return (await points(tablet).allInnerTexts()).map((text) => text.replace(/\s+/g, ' '));
}

/** Follows the link of a point, by the line of the accounts where it leads there, until the step stands open. */
export async function followPoint(
  tablet: StepTablet,
  packageId: string,
  { words, account, step }: { readonly words: RegExp; readonly account?: string; readonly step: number },
): Promise<void> {
  await tablet.desk.go(`/packages/${packageId}/release-check`);
  await points(tablet).filter({ hasText: words }).first().getByRole('link').first().tap();
  if (account !== undefined)
    await tablet.page
      .getByRole('region', { name: 'Accounted for' })
      .locator('tr, li')
      .filter({ hasText: account })
      .getByRole('link', { name: String(step), exact: true })
      .tap();
  await tablet.panel(step).waitFor();
}
