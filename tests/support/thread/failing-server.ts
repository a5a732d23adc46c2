import type { Page } from 'playwright-core';

/** Everything the client asks for but who is signed in. */
const RECORDS = /\/api\/(?!session)/;

const FAILED = JSON.stringify({
  type: 'urn:problem:FAILED',
  title: 'Something went wrong',
  status: 500,
  detail: 'The server could not answer.',
  code: 'FAILED',
  fields: [],
  requestId: 'request-1',
});

/** From now on every question about records is answered with 500. */
export async function failEveryAnswer(page: Page): Promise<void> {
  await page.clock.install();
  await page.route(RECORDS, (route) =>
    route.fulfill({ status: 500, contentType: 'application/problem+json', body: FAILED }),
  );
}

/** From now on no question about records is answered at all. */
export async function loseEveryAnswer(page: Page): Promise<void> {
  await page.clock.install();
  await page.route(RECORDS, (route) => route.abort());
}

/** Opens an address and lets the client's own repetitions of its questions pass at once, until it says that it failed. */
export async function openFailing(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  for (let step = 0; step < 20 && (await page.getByRole('alert').count()) === 0; step += 1) {
    await page.clock.runFor(1_000);
    await page.waitForTimeout(30);
  }
}
