/** Publish as a composer: parts, texts, copies, imprint, editions, and everything for selling; by keys as well, and sound by axe. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { seriousFindings } from './findings.ts';
import { captions, parts, publishing } from './publishing.ts';
import { readPdf } from './read-pdf.ts';

async function saveIn(page: Page, button: string, name: string): Promise<void> {
  await page.getByRole('button', { name: button }).click();
  await page.getByRole('button', { name: 'Folders', exact: true }).click();
  await page.getByRole('button', { name: 'Pictures and patterns' }).click();
  await page.getByLabel('Name').fill(name);
  await page.getByRole('button', { name: 'Save here' }).click();
}

async function unfold(page: Page, summary: string): Promise<void> {
  const details = page.locator('details', { has: page.locator('summary', { hasText: summary }) });
  if (!(await details.evaluate((element: HTMLDetailsElement) => element.open)))
    await details.locator('summary').click();
}

describe('a pattern is composed', () => {
  it('of the parts that are ticked, in the order that keys and buttons give them, each change one step', async () => {
    const { page, errors, logged } = await publishing();
    const before = await parts(page);
    expect(before[0]).toBe('Cover');
    await page.getByRole('checkbox', { name: 'Print Written rows' }).uncheck();
    expect(await parts(page)).toEqual(before.filter((part) => part !== 'Written rows'));
    await expect
      .poll(async () => (await captions(page)).some((each) => each.includes('Written rows')))
      .toBe(false);

    await page.getByRole('checkbox', { name: 'Print Materials' }).focus();
    await page.keyboard.press('Alt+ArrowUp');
    await page.getByRole('button', { name: 'Move Cautions and care up' }).click();
    const moved = await parts(page);
    expect(moved.indexOf('Materials')).toBe(before.indexOf('Materials') - 1);
    for (let step = 0; step < 3; step++) await page.keyboard.press('Control+Z');
    expect(await parts(page)).toEqual(before);
    expect([errors, logged]).toEqual([[], []]);
  });

  it('with texts of the designer’s own, left out where they are emptied, as first written where they are given up', async () => {
    const { page, folder } = await publishing();
    await unfold(page, 'Texts');
    await page
      .getByRole('textbox', { name: 'Terms of use' })
      .fill('Only for the reed cutters of the east bank.');
    // Saving takes what is being written.
    await page.keyboard.press('Control+S');
    await saveIn(page, 'Pattern as PDF…', 'Reeds.pdf');
    await page.getByText(/Reeds\.pdf: \d+ pages/).waitFor();
    const { pages } = await readPdf(readFileSync(join(folder, 'Reeds.pdf')));
    expect(pages.join(' ')).toContain('reed cutters of the east bank');
    await page.getByRole('textbox', { name: 'Terms of use' }).fill('');
    await page.getByRole('textbox', { name: 'Welcome' }).focus();
    await page.getByText('The terms are empty', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Terms of use: as first written' }).click();
    await expect.poll(() => page.getByText('The terms are empty', { exact: false }).count()).toBe(0);
  });

  it('for the left hand, in large print, in German and for somebody by name, and what is seen is what is saved', async () => {
    const { page, folder } = await publishing();
    await page.getByLabel('For the left hand').check();
    await page.getByLabel('Large print, from 6 mm').check();
    await page.getByRole('radio', { name: 'Deutsch' }).check();
    await page.getByLabel('Prepared for').fill('Wanda Reet');
    await expect
      .poll(async () =>
        (await captions(page)).some((each) => each.includes('Materialien') || each.includes('Material')),
      )
      .toBe(true);
    await page.getByText('The pages as they will be printed.').waitFor();
    const shown = await captions(page);
    await saveIn(page, 'Pattern as PDF…', 'Schilf.pdf');
    await page.getByText(/Schilf\.pdf: \d+ pages/).waitFor();
    const { pages } = await readPdf(readFileSync(join(folder, 'Schilf.pdf')));
    expect(pages).toHaveLength(shown.length);
    expect(pages.join(' ')).toContain('angefertigt für Wanda Reet');
    // Whoever looks at the hanging meanwhile finds the copy as it was asked for, under a name that tells it from others.
    await page.getByRole('button', { name: 'Draw', exact: true }).click();
    await page.getByRole('application').waitFor();
    await page.getByRole('button', { name: 'Publish' }).click();
    expect(await page.getByLabel('Prepared for').inputValue()).toBe('Wanda Reet');
    await page.getByRole('button', { name: 'Pattern as PDF…' }).click();
    expect(await page.getByLabel('Name').inputValue()).toBe(
      'Drawn A4, large print, left-handed, Deutsch, for Wanda Reet.pdf',
    );
  });

  it('under the imprint that is kept for all patterns', async () => {
    const { page } = await publishing();
    await page.getByRole('button', { name: 'Imprint…' }).click();
    const dialog = page.getByRole('dialog', { name: 'Imprint' });
    await dialog.getByLabel('Workshop or shop').fill('The Reed House');
    await dialog.getByLabel('Contact').fill('Bank 4\n\nada@reeds.example');
    expect(await seriousFindings(page)).toEqual([]);
    await dialog.getByRole('button', { name: 'Keep' }).click();
    await page.getByText('The Reed House', { exact: true }).waitFor();
    await expect.poll(() => page.getByText('there is no contact', { exact: false }).count()).toBe(0);
    await page.getByRole('button', { name: 'Imprint…' }).click();
    expect(await dialog.getByLabel('Contact').inputValue()).toBe('Bank 4\nada@reeds.example');
    // What is left by a slip of the hand is there again, and not kept.
    await dialog.getByLabel('About you').fill('Knots since the tide came in.');
    await page.keyboard.press('Escape');
    await page.getByText('What you wrote is not kept yet.', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Imprint…' }).click();
    expect(await dialog.getByLabel('About you').inputValue()).toBe('Knots since the tide came in.');
    expect(await seriousFindings(page)).toEqual([]);
    await dialog.getByRole('button', { name: 'Back to what is kept' }).click();
    expect(await dialog.getByLabel('About you').inputValue()).toBe('');
    expect(await dialog.getByLabel('Workshop or shop').inputValue()).toBe('The Reed House');
  });

  it('in editions that keep what they were made of, tell what changed since, and are printed again', async () => {
    const { page, folder } = await publishing();
    await unfold(page, 'Editions');
    await page.getByRole('button', { name: 'Publish the first edition…' }).click();
    const first = page.getByRole('dialog', { name: 'Publish edition 1' });
    // The text has the focus: what is written at once is not lost.
    await page.keyboard.type('The very first.');
    expect(await first.getByLabel('A note of your own').inputValue()).toBe('The very first.');
    await first.getByRole('button', { name: 'Publish edition 1' }).click();
    await page.getByText('Edition 1 is published.', { exact: false }).waitFor();
    await page.getByText('Nothing has changed.').waitFor();
    await page
      .getByText(/Edition 1, \d{4}-\d\d-\d\d/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Draw', exact: true }).click();
    await page.getByRole('application').focus();
    await page.keyboard.press('2');
    await page.keyboard.press('Space');
    await page.getByRole('button', { name: 'Publish' }).click();
    await unfold(page, 'Editions');
    await page.getByText('1 cell of the chart is tied otherwise, in row 1.').waitFor();
    await page.getByRole('button', { name: 'Add an erratum…' }).click();
    await page.getByRole('button', { name: 'Add the erratum' }).click();
    const erratum = page.getByLabel('What is wrong, and what is right');
    expect(await erratum.evaluate((area: HTMLTextAreaElement) => area.validity.valueMissing)).toBe(true);
    await erratum.fill('Row 1 begins with the other yarn.');
    await page.getByRole('button', { name: 'Add the erratum' }).click();
    await page.getByText(/^\d{4}-\d\d-\d\d: Row 1 begins with the other yarn\.$/).waitFor();
    await page.getByText('The design has changed since edition 1', { exact: false }).waitFor();
    await saveIn(page, 'Print it again: edition 1', 'Reeds again.pdf');
    await page.getByText(/Reeds again\.pdf: \d+ pages/).waitFor();
    const { pages } = await readPdf(readFileSync(join(folder, 'Reeds again.pdf')));
    expect(pages.at(-1)).toMatch(/Edition 1, \d{4}-\d\d-\d\d/);
  });

  it('and its hanging gets papers of its own, with the fibres that are told once', async () => {
    const { page, folder } = await publishing();
    await page.getByRole('button', { name: 'Papers for the hanging…' }).click();
    expect(await seriousFindings(page)).toEqual([]);
    await page.getByLabel('Fibre of the cord').fill('100 % flax');
    await page.getByLabel('Packing note').uncheck();
    await saveIn(page, 'Make them…', 'Reeds papers.pdf');
    await page.getByText(/Reeds papers\.pdf: \d+ pages?/).waitFor();
    const { pages } = await readPdf(readFileSync(join(folder, 'Reeds papers.pdf')));
    expect(pages.join(' ')).toContain('100 % flax');
    await page.getByRole('button', { name: 'Papers for the hanging…' }).click();
    expect(await page.getByLabel('Fibre of the cord').inputValue()).toBe('100 % flax');
  });

  it('and everything for selling it is one archive, for whom it is prepared', async () => {
    const { page, folder, errors, foreignRequests, logged } = await publishing();
    await page.getByRole('button', { name: 'Everything for selling…' }).click();
    // Nobody is named yet.
    expect(await page.getByRole('dialog').getByText('Prepared for').count()).toBe(0);
    await page.keyboard.press('Escape');
    await page.getByLabel('Prepared for').fill('Wanda Reet');
    await page.getByRole('button', { name: 'Everything for selling…' }).click();
    expect(await seriousFindings(page)).toEqual([]);
    await page.getByRole('checkbox', { name: 'Deutsch' }).check();
    await page.getByText(/^16 patterns, 10 pictures for the shop and 2 listings: 28 files/).waitFor();
    await page.getByText('All in metric units, for the right hand', { exact: false }).waitFor();
    await page
      .getByText('“Prepared for Wanda Reet” stands at the foot of every page but the cover.')
      .waitFor();
    await saveIn(page, 'Make them…', 'Reeds for sale.zip');
    await page.getByText(/Reeds for sale\.zip: 28 files/).waitFor({ timeout: 60_000 });
    const files = Object.entries(unzipSync(new Uint8Array(readFileSync(join(folder, 'Reeds for sale.zip')))));
    const patterns = files.filter(([name]) => name.endsWith('.pdf'));
    expect(patterns).toHaveLength(16);
    const named = { 'prepared for Wanda Reet': 0, 'angefertigt für Wanda Reet': 0 };
    for (const [, bytes] of patterns) {
      const { pages } = await readPdf(bytes);
      for (const words of ['prepared for Wanda Reet', 'angefertigt für Wanda Reet'] as const)
        if (pages.slice(1).every((page) => page.includes(words))) named[words]++;
    }
    expect(named).toEqual({ 'prepared for Wanda Reet': 8, 'angefertigt für Wanda Reet': 8 });
    expect([errors, foreignRequests, logged]).toEqual([[], [], []]);
  });
});

describe('with all that Publish shows unfolded', () => {
  it.each([
    ['light', 1280, 800],
    ['dark', 1280, 800],
    ['light', 1024, 700],
    ['dark', 1024, 700],
    ['light', 1920, 1080],
    ['dark', 1920, 1080],
  ] as const)('nothing serious is found in the %s theme, at %i x %i', async (colorScheme, width, height) => {
    const { page } = await publishing({ colorScheme, width, height });
    for (const summary of ['Before it is sold', 'Cover', 'Texts', 'Editions']) await unfold(page, summary);
    expect(await seriousFindings(page)).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
  });
});
