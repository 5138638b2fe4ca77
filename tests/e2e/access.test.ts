/** What axe-core, a published checker of the Web Content Accessibility Guidelines, finds on every screen and dialog. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { isPlanned } from './drawing.ts';
import { openStudio } from './studio.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Serious and critical findings, as 'rule: where'. */
async function seriousFindings(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  const { violations } = await page.evaluate(() =>
    (window as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run(),
  );
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}`));
}

describe.each(['light', 'dark'] as const)('in the %s theme axe finds nothing serious', (colorScheme) => {
  it('on the shelf, the Draw screen and Publish', async () => {
    const { page } = await openStudio({ colorScheme });
    await page.getByRole('button', { name: 'Open Moth at the window' }).waitFor();
    expect(await seriousFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Open Moth at the window' }).click();
    await isPlanned(page);
    expect(await seriousFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Publish' }).click();
    await page.getByText(/pages for 30 cords/).waitFor();
    expect(await seriousFindings(page)).toEqual([]);
  });

  it('in the dialogs', async () => {
    const { page } = await openStudio({ colorScheme });
    const dialog = async (open: () => Promise<void>) => {
      await open();
      await page.getByRole('dialog').waitFor();
      const findings = await seriousFindings(page);
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      return findings;
    };
    const click = (name: string) => () => page.getByRole('button', { name }).first().click();
    expect(await dialog(click('New design…'))).toEqual([]);
    expect(await dialog(click('Picture to chart…'))).toEqual([]);
    expect(await dialog(click('Rename…'))).toEqual([]);
    expect(await dialog(click('Move to bin'))).toEqual([]);
    expect(await dialog(() => page.keyboard.press('F1'))).toEqual([]);
    expect(await dialog(() => page.keyboard.press('Control+,'))).toEqual([]);
    await page.getByRole('button', { name: 'Open Moth at the window' }).click();
    await isPlanned(page);
    for (const name of ['Add…', 'Change…', 'Replace…', 'Merge…', 'Size, cords, dowel…'])
      expect(await dialog(click(name)), name).toEqual([]);
  });
});
