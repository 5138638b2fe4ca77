/** Commands as a person without a pointer runs them: from the searchable list. */
import type { Page } from 'playwright-core';

/** Runs the first command that has these words. */
export async function runCommand(page: Page, words: string): Promise<void> {
  await page.keyboard.press('F1');
  const list = page.getByRole('dialog', { name: 'Find a command' });
  await list.waitFor();
  await page.keyboard.insertText(words);
  await list.locator('[aria-selected="true"][aria-disabled="false"]').waitFor({ timeout: 5_000 });
  await page.keyboard.press('Enter');
  await list.waitFor({ state: 'detached' });
}

/** Runs the command of exactly this label, going down to it where others with its words stand above it. */
export async function runLabelled(page: Page, label: string): Promise<void> {
  await page.keyboard.press('F1');
  const list = page.getByRole('dialog', { name: 'Find a command' });
  await list.waitFor();
  await page.keyboard.insertText(label);
  for (let i = 0; i < 20; i++) {
    if ((await list.locator('[aria-selected="true"] .label').textContent()) === label) {
      await page.keyboard.press('Enter');
      await list.waitFor({ state: 'detached' });
      return;
    }
    await page.keyboard.press('ArrowDown');
  }
  throw new Error(`the list does not lead to “${label}”`);
}
