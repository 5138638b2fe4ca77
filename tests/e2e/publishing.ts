/** The Publish screen with a small design, and what it shows of the pattern. */
import type { Page } from 'playwright-core';
import { designFromLetters } from '../notation.ts';
import type { View } from './browser.ts';
import { type Drawing, drawing } from './drawing.ts';

const design = designFromLetters(['aabbaabb', 'abbaabba', 'bbaabbaa', 'aabbaabb'], {
  title: 'Reeds',
  designer: 'Ada Fenn',
});

/** Its pages are those of the full plan. */
export async function publishing(view: View = {}): Promise<Drawing> {
  const studio = await drawing(design, view);
  await studio.page.getByRole('button', { name: 'Publish' }).click();
  await settled(studio.page);
  return studio;
}

export function settled(page: Page): Promise<void> {
  return page.getByText('The pages as they will be printed.').waitFor();
}

/** The parts that are printed, in their order. */
export function parts(page: Page): Promise<string[]> {
  return page
    .getByRole('list', { name: 'Parts in printing order' })
    .locator('.publish-part > span:first-child')
    .allTextContents();
}

/** What stands below the pages. */
export function captions(page: Page): Promise<string[]> {
  return page.getByRole('list', { name: 'Pages' }).locator('p').allTextContents();
}
