/** Commands as a person without a pointer runs them: from the searchable list. */
import type { Page } from 'playwright-core';

/** Runs the first command that has these words. */
export async function runCommand(page: Page, words: string): Promise<void> {
  await page.keyboard.press('F1');
  const list = page.getByRole('dialog', { name: 'Find a command' });
  await list.waitFor();
  await page.keyboard.type(words);
  await list.locator('[aria-selected="true"][aria-disabled="false"]').waitFor({ timeout: 5_000 });
  await page.keyboard.press('Enter');
  await list.waitFor({ state: 'detached' });
}
