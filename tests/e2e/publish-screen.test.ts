/** Getting about on Publish: by pointer, by keys and by commands; its pages, and a photograph for the cover. */
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { type Command, commands } from '../../shared/commands.ts';
import { mottledDesign } from '../bench/parts/mottled-design.ts';
import { drag, drawing } from './drawing.ts';
import { seriousFindings } from './findings.ts';
import { captions, parts, publishing, settled } from './publishing.ts';
import { runLabelled } from './run-command.ts';

const part = (page: Page, name: string) =>
  page
    .getByRole('list', { name: 'Parts in printing order' })
    .getByRole('button', { name, exact: false })
    .first();

const focused = (page: Page) =>
  page.evaluate(
    () => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent,
  );

async function middleOf(page: Page, name: string) {
  const { x, y, width, height } = (await part(page, name).boundingBox())!;
  return { x: x + width / 3, y: y + height / 2 };
}

describe('a part of the pattern', () => {
  it('is dragged to another place, which chooses nothing, and stays where Escape stops it', async () => {
    const { page } = await publishing();
    const before = await parts(page);
    const from = await middleOf(page, 'Materials');
    const cover = await middleOf(page, 'Cover');
    await drag(page, from, { x: cover.x, y: cover.y - 14 });
    const dragged = ['Materials', ...before.filter((each) => each !== 'Materials')];
    expect(await parts(page)).toEqual(dragged);
    expect(await page.locator('.publish-grip[aria-current="true"]').count()).toBe(0);
    await page.mouse.move(cover.x, cover.y);
    await page.mouse.down();
    await page.mouse.move(from.x, from.y + 80, { steps: 3 });
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect(await parts(page)).toEqual(dragged);
    await page.keyboard.press('Control+Z');
    expect(await parts(page)).toEqual(before);
  });

  it('keeps the focus while Alt and the arrows take it down and up again', async () => {
    const { page } = await publishing();
    const before = await parts(page);
    await part(page, 'Cover').focus();
    for (const key of ['Alt+ArrowDown', 'Alt+ArrowDown', 'Alt+ArrowUp']) await page.keyboard.press(key);
    expect(await parts(page)).toEqual([before[1], 'Cover', ...before.slice(2)]);
    expect(await focused(page)).toContain('Cover');
  });

  it('is ticked and left out with the focus on its box, also when none is left; then nothing can be saved', async () => {
    const { page } = await publishing();
    const box = (name: string) => page.getByRole('checkbox', { name: `Print ${name}`, exact: true });
    await box('Cut list').focus();
    await page.keyboard.press('Space');
    await expect.poll(() => focused(page)).toBe('Print Cut list');
    expect(await parts(page)).toContain('Cut list');
    for (const name of await parts(page)) await box(name).uncheck();
    await page.getByText('There is no page: tick at least the chart among the parts.').waitFor();
    for (const name of ['Pattern as PDF…', 'Everything for selling…']) {
      await page.getByRole('button', { name }).focus();
      await page.keyboard.press('Enter');
      await page.getByText('The pattern has no page', { exact: false }).waitFor();
      await page.getByRole('button', { name: 'I see' }).click();
      expect(await page.getByRole('dialog').count()).toBe(0);
    }
    await box('Chart').check();
    await page.getByText('1 page for 8 cords and 4 rows.').waitFor();
    await page.getByRole('button', { name: 'The usual parts' }).click();
    await expect.poll(() => focused(page)).toBe('The usual parts');
  });

  it('shows its pages and its texts when it is chosen, and commands are about it', async () => {
    const { page } = await publishing();
    const before = await parts(page);
    await part(page, 'Finishing').click();
    await expect.poll(() => page.getByRole('textbox', { name: 'Finishing steps' }).isVisible()).toBe(true);
    const seen = page.locator('.publish-page h3', { hasText: 'Finishing' });
    const box = (await seen.boundingBox())!;
    expect(box.y).toBeGreaterThan(0);
    expect(box.y).toBeLessThan(800);
    await runLabelled(page, 'Move this part up');
    const at = before.indexOf('Finishing');
    expect((await parts(page)).indexOf('Finishing')).toBe(at - 1);
    await runLabelled(page, 'Leave this part out');
    expect(await parts(page)).not.toContain('Finishing');
    await runLabelled(page, 'Move this part down');
    await page.getByText('Choose a part that is printed first', { exact: false }).waitFor();
    await runLabelled(page, 'The usual parts');
    expect(await parts(page)).toEqual(before);
  });
});

describe('a text that is being written', () => {
  it('is kept when something else is pressed, however long, and the press is not lost', async () => {
    const { page, savedDesign } = await publishing();
    await page.locator('summary', { hasText: 'Texts' }).click();
    const imprint = page.getByRole('button', { name: 'Imprint…' });
    for (const [label, heldMs] of [
      ['Terms of use', 30],
      ['Skill', 400],
    ] as const) {
      await page.getByLabel(label, { exact: true }).fill(`${label}, anew.`);
      await imprint.scrollIntoViewIfNeeded();
      const { x, y } = (await imprint.boundingBox())!;
      await page.mouse.move(x + 20, y + 10);
      await page.mouse.down();
      await page.waitForTimeout(heldMs);
      await page.mouse.up();
      await page.getByRole('dialog', { name: 'Imprint' }).waitFor();
      await page.keyboard.press('Escape');
    }
    expect((await savedDesign()).pattern?.texts).toEqual({
      terms: 'Terms of use, anew.',
      skill: 'Skill, anew.',
    });
    await page.getByLabel('Skill', { exact: true }).fill('Once more.');
    await page
      .locator('[data-text="skill"]')
      .getByRole('button', { name: 'Skill: as first written' })
      .click();
    expect((await savedDesign()).pattern?.texts).toEqual({ terms: 'Terms of use, anew.' });
  });

  it.each([
    ['checkbox', 'Rows written beside the chart'],
    ['checkbox', 'Print Tick sheet'],
    ['radio', 'Deutsch'],
  ] as const)('is kept, and the %s ‘%s’ is ticked when it is pressed next, once', async (role, name) => {
    const { page, savedDesign } = await publishing();
    await page.locator('summary', { hasText: 'Texts' }).click();
    await page.getByRole('textbox', { name: 'Welcome' }).fill('Come in.');
    await page.getByRole(role, { name, exact: true }).click();
    expect(await page.getByRole(role, { name, exact: true }).isChecked()).toBe(true);
    expect((await savedDesign()).pattern?.texts).toEqual({ welcome: 'Come in.' });
  });

  it('is kept when a box is pressed next by its words or by keys, and the box is ticked', async () => {
    const { page, savedDesign } = await publishing();
    await page.locator('summary', { hasText: 'Texts' }).click();
    const welcome = page.getByRole('textbox', { name: 'Welcome' });
    const box = page.getByRole('checkbox', { name: 'Rows written beside the chart' });
    await welcome.fill('Come in.');
    await page.getByText('Rows written beside the chart', { exact: true }).click();
    expect(await box.isChecked()).toBe(true);
    await welcome.fill('Come in, all.');
    await box.focus();
    await page.keyboard.press('Space');
    expect(await box.isChecked()).toBe(false);
    expect((await savedDesign()).pattern?.texts).toEqual({ welcome: 'Come in, all.' });
  });
});

describe('a finding', () => {
  it('leads to where it is mended, with the focus', async () => {
    const { page } = await publishing();
    const go = async (name: string) => {
      await page.getByRole('button', { name, exact: true }).first().focus();
      await page.keyboard.press('Enter');
    };
    await go('Go to the imprint');
    await page.getByRole('dialog', { name: 'Imprint' }).waitFor();
    expect(await focused(page)).toBe('');
    await page.keyboard.press('Escape');
    await page.getByRole('checkbox', { name: 'Print Chart', exact: true }).uncheck();
    await go('Go to the parts');
    await expect.poll(() => focused(page)).toBe('Print Cover');
    await page.locator('summary', { hasText: 'Texts' }).click();
    await page.getByRole('textbox', { name: 'Terms of use' }).fill('');
    await page.getByLabel('Skill', { exact: true }).focus();
    await go('Go to the text: Terms of use');
    await expect
      .poll(() =>
        page
          .getByRole('textbox', { name: 'Terms of use' })
          .evaluate((area) => area === document.activeElement),
      )
      .toBe(true);
    await go('Go to the swatches on Plan');
    await expect.poll(() => focused(page)).toBe('Swatches');
  });
});

describe('the commands of Publish', () => {
  it('can all be run, and none fails', async () => {
    const { page, errors, logged } = await publishing();
    const all: readonly Command[] = commands;
    for (const { id, label } of all.filter(({ needs }) => needs === 'publish')) {
      await runLabelled(page, label);
      // Whatever is asked is let go of.
      for (let i = 0; i < 2; i++) await page.keyboard.press('Escape');
      expect(errors, id).toEqual([]);
      expect(await page.getByRole('dialog').count(), id).toBe(0);
    }
    await settled(page);
    expect(logged).toEqual([]);
  });
});

describe('the pages', () => {
  it('are reached with F6, gone through with arrows, and shown large one after the other', async () => {
    const { page } = await publishing();
    await part(page, 'Cover').focus();
    await page.keyboard.press('F6');
    expect(await focused(page)).toBe('Show page 1 large: Cover');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    const large = page.getByRole('dialog');
    const shown = (number: number) =>
      large.getByRole('heading', { name: new RegExp(`^Page ${number} of \\d+ · `) }).waitFor();
    await shown(2);
    await page.keyboard.press('ArrowRight');
    await shown(3);
    expect(await seriousFindings(page)).toEqual([]);
    const count = (await captions(page)).length;
    for (const [key, number] of [
      ['PageDown', 4],
      ['End', count],
      ['PageDown', count],
      ['PageUp', count - 1],
      ['Home', 1],
      ['ArrowLeft', 1],
    ] as const) {
      await page.keyboard.press(key);
      await shown(number);
    }
    await large.getByRole('button', { name: 'Next page' }).click();
    await large.getByRole('button', { name: 'Next page' }).click();
    await large.getByRole('button', { name: 'Page before' }).click();
    await shown(2);
    expect(await large.getByRole('button', { name: 'Close' }).count()).toBe(1);
    await page.keyboard.press('Escape');
    await expect.poll(() => focused(page)).toMatch(/^Show page 2 large/);
  });

  it('are hundreds at times: said so, drawn only near what is in sight, and soon laid out in another way', async () => {
    const { page, errors } = await drawing(mottledDesign(200, 300));
    await page.getByRole('button', { name: 'Publish' }).click();
    await settled(page);
    const count = (await captions(page)).length;
    expect(count).toBeGreaterThan(60);
    await page.getByText(`The pattern has ${count} pages`, { exact: false }).waitFor();
    await part(page, 'Cautions and care').click();
    const drawn = () =>
      page
        .locator('.publish-page canvas')
        .evaluateAll((all) => all.filter((canvas) => (canvas as HTMLCanvasElement).width > 0).length);
    await expect.poll(drawn).toBeGreaterThan(0);
    expect(await drawn()).toBeLessThan(count / 2);
    await page.getByLabel('Prepared for').pressSequentially('Wanda Reet');
    await page.getByRole('radio', { name: 'Deutsch' }).check();
    await expect
      .poll(async () => (await captions(page)).join(' '), { timeout: 20_000 })
      .toContain('Willkommen');
    // Words and letters need no other plan.
    expect((await captions(page)).join(' ')).not.toContain('quick plan');
    await settled(page);
    expect(errors).toEqual([]);
  });
});

describe('the cover', () => {
  it('shows the maker’s own photograph, kept in the design, until the drawn hanging comes back', async () => {
    const { page, folder, savedDesign } = await publishing();
    await sharp({ create: { width: 90, height: 120, channels: 3, background: '#2244aa' } })
      .jpeg()
      .toFile(join(folder, 'Hung.jpg'));
    await runLabelled(page, 'A photograph for the cover…');
    await page.getByRole('button', { name: 'Folders', exact: true }).click();
    await page.getByRole('button', { name: 'Pictures and patterns' }).click();
    await page.getByRole('button', { name: 'Hung.jpg' }).click();
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    await page.getByText('The cover shows your photograph.').waitFor({ state: 'attached' });
    await expect.poll(() => middleOfCover(page)).toEqual([34, 68, 170]);
    expect((await savedDesign()).pattern?.cover).toMatchObject({
      mediaType: 'image/jpeg',
      widthPx: 90,
      heightPx: 120,
    });
    await runLabelled(page, 'The drawn hanging on the cover');
    expect((await savedDesign()).pattern?.cover).toBeUndefined();
    await expect.poll(() => middleOfCover(page)).not.toEqual([34, 68, 170]);
  });
});

/** Red, green and blue, as JPEG keeps them to a few steps: rounded to the photograph's own where they are near. */
function middleOfCover(page: Page): Promise<number[]> {
  return page
    .locator('[data-page="1"] canvas')
    .evaluate((canvas: HTMLCanvasElement) => {
      const pixel = canvas.getContext('2d')!.getImageData(canvas.width / 2, canvas.height / 2, 1, 1).data;
      return [...pixel.slice(0, 3)];
    })
    .then((color) => {
      const blue = [34, 68, 170];
      return color.every((part, i) => Math.abs(part - blue[i]!) <= 4) ? blue : color;
    });
}
