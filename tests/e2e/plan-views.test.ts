/** The views of the Plan screen by keys alone, the whole tying order, and the screen in a small window. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { stepWords } from '../../shared/tying/steps/step-words.ts';
import { stepsOf } from '../../shared/tying/steps/steps-of.ts';
import { tyingOrder } from '../../shared/tying/steps/tying-order.ts';
import { designFromLetters } from '../notation.ts';
import type { View } from './browser.ts';
import { drawing } from './drawing.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const design = designFromLetters(['aaabbbaa', 'aabbbaaa', 'aaabbbaa', 'abababab', 'aaaaaaaa']);

async function planning(view: View = {}) {
  const studio = await drawing(design, view);
  await studio.page.keyboard.press('Control+3');
  await studio.page.getByRole('application').waitFor();
  await studio.page.getByRole('slider', { name: 'Tying order' }).waitFor();
  return studio;
}

/** What has the focus, by its name or its words. */
function focused(page: Page): Promise<string> {
  return page.evaluate(() => {
    const here = document.activeElement;
    return here?.getAttribute('aria-label') ?? here?.textContent ?? '';
  });
}

async function tabTo(page: Page, name: RegExp, most: number): Promise<void> {
  for (let i = 0; i < most; i++) {
    if (name.test(await focused(page))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no stop called ${name} within ${most} presses of Tab`);
}

/** Said politely, and not seen. */
function said(page: Page, words: string | RegExp): Promise<void> {
  return page.locator('.unseen[aria-live]').getByText(words).waitFor({ state: 'attached' });
}

describe('the Plan screen by keys alone', () => {
  it('shows a view, a strand, a cut and a carry, follows the order, and takes it back', async () => {
    const { page, errors } = await planning();
    expect(await focused(page)).toMatch(/^Chart of 8 cords/);
    await page.keyboard.press('h');
    await said(page, 'Shown: Hanging at once.');
    await page.getByText('Strands that hang below a row').waitFor();
    await page.keyboard.press('ArrowDown');
    await said(page, /^Row 2, cord 1, .* below the row$/);
    await page.keyboard.press('s');
    await page.getByRole('list', { name: 'Signs on the chart' }).getByText('a strand begins').waitFor();
    await page.keyboard.press('Enter');
    await page.getByText('every other piece is lighter or darker').waitFor();
    // The second row goes to the left: its run ends with the first cord.
    await page.keyboard.press('ArrowRight');
    await page.getByText(/^A cut here is after cord 1 of row 2, where the run ends/).waitFor();
    await page.keyboard.press('x');
    await page.getByRole('button', { name: 'Cut after row 2, cord 1', exact: true }).waitFor();
    await page.keyboard.press('f');
    await page.getByText('Carry from row 2, cord 2.').waitFor();
    await page.keyboard.press('Escape');
    await page.getByText('Carry from row 2, cord 2.').waitFor({ state: 'detached' });
    await page.keyboard.press('b');
    await said(page, /^Row \d, .* in use$/);
    await page.keyboard.press('Control+z');
    await page.getByText('Undone: Cut here.').waitFor();
    await page.getByText(/^Nothing is pinned/).waitFor();
    expect(errors).toEqual([]);
  });

  it('gives a carry up that was begun when another view or leaf is turned to', async () => {
    const { page } = await planning();
    const asks = page.getByText(/Now choose the knot that the strand goes on to/);
    for (const leave of ['e', 'leaf']) {
      await page.getByRole('application').focus();
      await page.keyboard.press('Home');
      await page.keyboard.press('f');
      await asks.waitFor();
      if (leave === 'leaf') {
        await page.getByRole('button', { name: 'Sizes', exact: true }).click();
        await page.getByRole('button', { name: 'Chart', exact: true }).click();
      } else await page.keyboard.press(leave);
      await asks.waitFor({ state: 'detached' });
    }
  });

  it('has one stop past the settings, one for each row of buttons, and one for each setting', async () => {
    const { page } = await planning();
    await page.getByRole('button', { name: 'Find a command' }).focus();
    await page.keyboard.press('Tab');
    expect(await focused(page)).toBe('To the chart');
    await page.keyboard.press('Enter');
    expect(await focused(page)).toMatch(/^Chart of 8 cords/);
    // Back from the chart: the views, the leaves, and then the settings already.
    await page.keyboard.press('Shift+Tab');
    expect(await focused(page)).toBe('Strands');
    await page.keyboard.press('ArrowRight');
    expect(await focused(page)).toBe('Hanging at once');
    await page.keyboard.press('Enter');
    await page.getByText('Strands that hang below a row').waitFor();
    await page.keyboard.press('Shift+Tab');
    expect(await focused(page)).toBe('Chart');
    const field = page.getByRole('textbox', { name: 'Carry at most, down', exact: true });
    await field.focus();
    const before = Number(await field.inputValue());
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => field.inputValue()).toBe(String(before + 1));
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
  });
});

describe('the whole tying order', () => {
  it('has every step of every row and what is done after the last, and marks the row at the slider', async () => {
    const { page } = await planning();
    const chart = flatten(design);
    const plan = planStrands(design, chart);
    if (!plan.ok) throw new Error(plan.problem.sentence);
    const yarnsById = new Map(design.yarns.map((yarn) => [yarn.id, yarn]));
    const rows = stepsOf(tyingOrder(chart, plan.value)).map((steps) =>
      steps.map((step) => stepWords(step, { yarnsById, units: 'metric', form: 'compact' })),
    );
    await page.getByText('The full plan.').waitFor();
    await page.getByRole('button', { name: 'Tying order', exact: true }).click();
    const listed = page.locator('.order-rows > li');
    await expect.poll(() => listed.locator('h3').allTextContents()).toEqual(rows.map((steps) => steps[0]));
    expect(await listed.locator('.order-steps > li').allTextContents()).toEqual(
      rows.flatMap((steps) => steps.slice(1)),
    );
    await page
      .getByRole('region', { name: 'After the last row' })
      .getByText('The hanging is done.')
      .waitFor();
    await page.getByRole('slider', { name: 'Tying order' }).press('Home');
    await page.getByRole('slider', { name: 'Tying order' }).press('PageUp');
    await expect.poll(() => page.locator('.order-rows > [aria-current]').getAttribute('data-row')).toBe('2');
    await page.getByRole('textbox', { name: 'Go to row' }).fill('4');
    await page.keyboard.press('Enter');
    expect(await focused(page)).toMatch(/^Row 4, /);
    await page.getByRole('button', { name: 'Row 4 on the chart' }).click();
    await page.getByText(/^Row 4, cord 8/).waitFor({ state: 'attached' });
    await page.getByText(/^Row 4, right to left · 24 of 40 knots/).waitFor();
  });

  it('is looked through by yarn and by strand', async () => {
    const { page } = await planning();
    await page.getByRole('button', { name: 'Tying order', exact: true }).click();
    const yarn = design.yarns[1]!;
    await page.getByLabel('Steps of', { exact: true }).selectOption(yarn.id);
    await page.getByRole('textbox', { name: /^Strand, 1 to/ }).fill('1');
    await expect
      .poll(async () => {
        const steps = await page.locator('.order-steps > li').allTextContents();
        return steps.length > 0 && steps.every((words) => words.includes(yarn.name));
      })
      .toBe(true);
  });
});

describe('the place in the tying order', () => {
  it('stands where it is shown; a command that moves it elsewhere turns to the chart', async () => {
    const { page } = await planning();
    const slider = page.getByRole('slider', { name: 'Tying order' });
    await page.getByRole('button', { name: 'Sizes', exact: true }).click();
    await slider.waitFor({ state: 'detached' });
    await page.keyboard.press('F1');
    await page.keyboard.type('Back by a run');
    await page.keyboard.press('Enter');
    await page.getByRole('application').waitFor();
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toMatch(/^Row .* of 40 knots/);
  });
});

describe('a small window', () => {
  it('folds the settings away by itself, and shows them when they are asked for', async () => {
    const { page } = await planning({ width: 1024, height: 700 });
    const room = page.getByRole('application');
    const folded = (await room.boundingBox())!.width;
    expect(await page.getByRole('textbox', { name: 'Working length', exact: true }).count()).toBe(0);
    await page.getByRole('button', { name: 'Show: How you tie' }).click();
    await page.getByRole('textbox', { name: 'Working length', exact: true }).waitFor();
    expect((await room.boundingBox())!.width).toBeLessThan(folded - 100);
    await page.getByRole('button', { name: 'Fold away: Strands and figures' }).press('Enter');
    await page.getByRole('button', { name: 'Show: Strands and figures' }).waitFor();
    await tabTo(page, /^Show: Strands and figures/, 1);
  });

  it.each(['light', 'dark'] as const)('is found sound by axe in the %s theme', async (colorScheme) => {
    const { page } = await planning({ width: 1024, height: 700, colorScheme });
    await page.evaluate(axeSource);
    for (const leaf of ['Chart', 'Tying order']) {
      await page.getByRole('button', { name: leaf, exact: true }).click();
      const { violations } = await page.evaluate(() =>
        (window as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run(),
      );
      const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
      expect(serious.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join()}`)).toEqual(
        [],
      );
    }
  });
});
