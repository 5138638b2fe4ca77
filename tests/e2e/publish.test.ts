/** Publish: pages at once by a quick plan, then those of the full plan, which is what the saved file holds. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { mottledDesign } from '../bench/parts/mottled-design.ts';
import { drawing } from './drawing.ts';
import { seriousFindings } from './findings.ts';
import { readPdf } from './read-pdf.ts';

/** As hard to plan as a photograph, so that the full plan takes a while. */
const design = mottledDesign(120, 160);

/** Its full plan takes so many seconds that nobody is too late to stop it. */
const longPlanned = mottledDesign(240, 320);

const making = 'Pages of a quick plan; the full plan, which is printed, is being made…';
const stopped =
  'Pages of a quick plan: the full one was stopped. What is saved is made with the full plan, and may take fewer pieces.';
const settled = 'The pages as they will be printed.';

async function publishing(published = design) {
  const studio = await drawing(published);
  await studio.page.getByRole('button', { name: 'Publish' }).click();
  return studio;
}

function captions(page: Page): Promise<string[]> {
  return page.getByRole('list', { name: 'Pages' }).locator('p').allTextContents();
}

/** The captions of the very moment at which the screen says so: a plan may be done a moment later. */
async function captionsWhileSaid(page: Page, words: string): Promise<readonly string[]> {
  const seen = await page.waitForFunction((said) => {
    const isSaid = document.querySelector('.pages-progress [role="status"]')?.textContent === said;
    const shown = [...document.querySelectorAll('[aria-label="Pages"] p')].map((each) => each.textContent);
    return isSaid && shown.length > 0 ? shown : null;
  }, words);
  return (await seen.jsonValue()) ?? [];
}

describe('the pages of a pattern', () => {
  it('are shown at once and marked as those of a quick plan, until the full plan is made', async () => {
    const { page, folder, errors, foreignRequests, logged } = await publishing();
    for (const caption of await captionsWhileSaid(page, making)) expect(caption).toContain('quick plan');
    await page.getByText(/pages for 120 cords and 160 rows/).waitFor();
    await page.getByText(settled).waitFor();
    for (const caption of await captions(page)) expect(caption).not.toContain('quick plan');

    await page.getByRole('button', { name: 'Pattern as PDF…' }).click();
    await page.getByRole('button', { name: 'Folders', exact: true }).click();
    await page.getByRole('button', { name: 'Pictures and patterns' }).click();
    await page.getByLabel('Name').fill('Drawn A4.pdf');
    await page.getByRole('button', { name: 'Save here' }).click();
    await page.getByText(/Drawn A4\.pdf: \d+ pages/).waitFor();
    const pdf = await readPdf(readFileSync(join(folder, 'Drawn A4.pdf')));
    expect(pdf.pages).toHaveLength((await captions(page)).length);
    expect([errors, foreignRequests, logged]).toEqual([[], [], []]);
  });

  it('stay those of the quick plan where it is stopped, until the full one is asked for again', async () => {
    const { page, errors } = await publishing(longPlanned);
    await page.getByRole('button', { name: 'Stop' }).click();
    for (const caption of await captionsWhileSaid(page, stopped)) expect(caption).toContain('quick plan');
    expect(await seriousFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Make the full plan' }).click();
    await page.getByText(making).waitFor();
    await page.getByText(settled).waitFor({ timeout: 60_000 });
    for (const caption of await captions(page)) expect(caption).not.toContain('quick plan');
    expect(errors).toEqual([]);
  });

  it('are not saved where saving is stopped: that is said, and no file is left', async () => {
    const { page, folder, errors } = await publishing(longPlanned);
    await page.getByRole('button', { name: 'Pattern as PDF…' }).click();
    await page.getByRole('button', { name: 'Folders', exact: true }).click();
    await page.getByRole('button', { name: 'Pictures and patterns' }).click();
    await page.getByRole('button', { name: 'Save here' }).click();
    const making = page.getByRole('dialog', { name: 'Making the pattern' });
    await expect
      .poll(() => making.getByRole('progressbar').getAttribute('value'), { timeout: 20_000 })
      .not.toBe('0');
    await making.getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Stopped. Nothing was written.').waitFor();
    expect(readdirSync(folder)).toEqual([]);
    expect(errors).toEqual([]);
  });

  it('are laid out for another paper without planning again', async () => {
    const { page } = await publishing();
    await page.getByText(settled).waitFor();
    const canvas = page.getByRole('list', { name: 'Pages' }).locator('canvas').first();
    const a4 = (await canvas.boundingBox())!;
    await page.getByRole('radio', { name: 'Letter' }).click();
    // Letter is wider than A4 and not as high: 215.9 x 279.4 mm against 210 x 297 mm.
    await expect.poll(async () => (await canvas.boundingBox())!.height).toBeLessThan(a4.height);
    expect((await canvas.boundingBox())!.width).toBeGreaterThan(a4.width);
    expect(await page.getByText(settled).count()).toBe(1);
  });
});
