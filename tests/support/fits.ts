import type { Desk } from './thread/desk.js';

/** A desk, a tablet upright, and a desk enlarged to 200 %, in pixels of the page. */
const SIZES = [
  { width: 1280, height: 900 },
  { width: 820, height: 1180 },
  { width: 640, height: 450 },
] as const;

/** The sizes at which the page is wider than its window, each with by how much; none when all is well. */
export async function tooWide({ page }: Desk): Promise<string[]> {
  const found: string[] = [];
  for (const size of SIZES) {
    await page.setViewportSize(size);
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    if (over > 0) found.push(`${size.width}: ${over}`);
  }
  await page.setViewportSize(SIZES[0]);
  return found;
}
