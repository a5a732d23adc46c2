import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

/** WCAG 2.0 to 2.2 at levels A and AA, and axe's best practice. */
const OPTIONS: RunOptions = {
  runOnly: {
    type: 'tag',
    values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  },
  resultTypes: ['violations'],
};

interface WithAxe {
  readonly axe: { run(context: Document, options: RunOptions): Promise<AxeResults> };
}

/** The rules whose answer depends on colours. */
const OF_COLOURS: RunOptions = {
  runOnly: { type: 'rule', values: ['color-contrast', 'link-in-text-block'] },
  resultTypes: ['violations'],
};

/** What axe finds on the page as it stands: a line for each element, with the rule and what fails. */
export async function findings(page: Page, rules = OPTIONS): Promise<string[]> {
  const { violations } = await page.evaluate(
    (options) => (window as unknown as WithAxe).axe.run(document, options),
    rules,
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(
      ({ target, failureSummary }) =>
        `${id}: ${target.join(' ')}: ${(failureSummary ?? '').replace(/\s+/g, ' ')}`,
    ),
  );
}

export const THEMES = ['light', 'dark'] as const;

/** Has the device ask for a theme, and waits until the page is drawn in it. */
export async function turnTo(page: Page, theme: (typeof THEMES)[number]): Promise<void> {
  await page.emulateMedia({ colorScheme: theme });
  await page.evaluate(
    () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))),
  );
}

/** What axe finds by all rules in the light theme, and by those that see colours in the dark one too. */
export async function findingsInBothThemes(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const [theme, rules] of [
    ['dark', OF_COLOURS],
    ['light', OPTIONS],
  ] as const) {
    await turnTo(page, theme);
    found.push(...(await findings(page, rules)).map((finding) => `${theme}: ${finding}`));
  }
  return found;
}
