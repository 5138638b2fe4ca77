/** The Plan screen as a person uses it: a strand and its way, the tying order, and what a setting changes. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import { BARE } from '../../shared/design/codes.ts';
import type { Design } from '../../shared/design/design.ts';
import { newDesign } from '../../shared/design/new-design.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import { layOutPattern } from '../../shared/pattern/lay-out-pattern.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { formatTime } from '../../shared/units/time.ts';
import { formatYarnLength } from '../../shared/units/yarn-length.ts';
import { designFromLetters } from '../notation.ts';
import type { View } from './browser.ts';
import { designIn, drawing } from './drawing.ts';
import { runLabelled } from './run-command.ts';
import { openStudio, type Studio } from './studio.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** A demo design on the Plan screen, its full plan made. */
async function planning(view: View = {}): Promise<Studio & { readonly path: string }> {
  const studio = await openStudio(view);
  const { page, shelf } = studio;
  await page.getByRole('button', { name: 'Open Moth at the window' }).click();
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  await isFullyPlanned(page);
  return { ...studio, path: join(shelf, 'Moth at the window.larkrow') };
}

function isFullyPlanned(page: Page): Promise<void> {
  return page.getByText('The full plan.').waitFor();
}

function chart(page: Page) {
  return page.getByRole('application');
}

/** The sentence of the chosen strand. */
function strand(page: Page) {
  return page.getByRole('complementary', { name: 'Strands and figures' }).getByRole('status').first();
}

/** One figure of what it takes, 'now' or against the last setting or a careful person. */
async function figure(page: Page, name: string, column: 'now' | 'last' | 'careful'): Promise<string> {
  const row = page.getByRole('row', { name }).first();
  const cell = row.getByRole('cell').nth(['now', 'last', 'careful'].indexOf(column));
  return (await cell.textContent())!;
}

/** What the command line and the pattern say of a design. */
function toldElsewhere(design: Design) {
  const flat = flatten(design);
  const plan = planStrands(design, flat);
  if (!plan.ok) throw new Error(plan.problem.sentence);
  const materials = materialsOf(design, flat, plan.value);
  const pattern = layOutPattern({
    design,
    chart: flat,
    plan: plan.value,
    materials,
    paper: 'a4',
    units: 'metric',
  });
  const printed = pattern.pages
    .flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
    .join(' ');
  return { plan: plan.value, materials, printed };
}

describe('the Plan screen', () => {
  it('shows the figures that the JSON and the pattern have', async () => {
    const { page, path, errors, foreignRequests, logged } = await planning();
    const { plan, materials, printed } = toldElsewhere(designIn(path));
    const { pieces, looseEnds, yarnCutMm, liveMax, seconds } = materials.totals;
    expect(await figure(page, 'Pieces', 'now')).toBe(String(pieces));
    expect(await figure(page, 'Loose ends', 'now')).toBe(String(looseEnds));
    expect(await figure(page, 'Hanging at once', 'now')).toBe(String(liveMax));
    expect(await figure(page, 'Hours', 'now')).toBe(`≈ ${formatTime(seconds)}`);
    expect(await figure(page, 'Carries and turns', 'now')).toBe(
      formatYarnLength(plan.totals.carriedMm, 'metric'),
    );
    const yarn = formatYarnLength(yarnCutMm, 'metric', { enough: true });
    expect(await figure(page, 'Yarn to cut', 'now')).toBe(yarn);
    expect(printed).toContain(`${looseEnds} loose ends`);
    expect(printed).toContain(`at most ${liveMax} strands hanging at once`);
    expect(printed).toContain(yarn);
    expect([errors, foreignRequests, logged]).toEqual([[], [], []]);
  });

  it('chooses a strand by keys, says its way, and goes to its neighbours', async () => {
    const { page } = await planning();
    await chart(page).focus();
    await page.keyboard.press('Enter');
    expect(await strand(page).textContent()).toMatch(
      /^Night, strand 1: pieces? 1\b.*; ends at row \d+, cord \d+\.$/,
    );
    await page.keyboard.press('.');
    await expect.poll(() => strand(page).textContent()).toMatch(/^Night, strand 2: /);
    await page.keyboard.press(',');
    await expect.poll(() => strand(page).textContent()).toMatch(/^Night, strand 1: /);
    await page.keyboard.press('z');
    const end = /ends at row (\d+), cord (\d+)/.exec((await strand(page).textContent())!)!;
    await page.getByText(`Row ${end[1]}, cord ${end[2]}, Night, strand 1`).waitFor({ state: 'attached' });
    await page.keyboard.press('Escape');
    await expect.poll(() => strand(page).textContent()).toContain('Choose a knot');
  });

  it('lets a chosen strand go where a row that was put in is taken out again', async () => {
    const { page } = await planning();
    await page.getByRole('button', { name: 'Draw', exact: true }).click();
    await chart(page).focus();
    await runLabelled(page, 'Insert a row above');
    await page.getByRole('button', { name: 'Plan', exact: true }).click();
    await isFullyPlanned(page);
    await chart(page).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => strand(page).textContent()).toMatch(/strand 1: /);
    await page.keyboard.press('Control+z');
    await expect.poll(() => strand(page).textContent()).toContain('Choose a knot');
  });

  it('chooses the strand of a knot by pointer, and lets go on a bare cell', async () => {
    const bare = newDesign({ title: 'Drawn', columns: 6, rows: 4 });
    const layer = bare.layers[0]!;
    const rows = layer.rows.map((row, r) => (r === 3 ? row.slice().fill(BARE) : row));
    const { page, at } = await drawing({ ...bare, layers: [{ ...layer, rows }] });
    await page.getByRole('button', { name: 'Plan', exact: true }).click();
    await isFullyPlanned(page);
    const knot = await at(1, 2);
    await page.mouse.click(knot.x, knot.y);
    await expect.poll(() => strand(page).textContent()).toMatch(/^Linen, strand 1: /);
    const cord = await at(3, 2);
    await page.mouse.click(cord.x, cord.y);
    await expect.poll(() => strand(page).textContent()).toContain('Choose a knot');
  });

  it('follows the tying order on the slider and says what is done next', async () => {
    const { page } = await planning();
    const slider = page.getByRole('slider', { name: 'Tying order' });
    await slider.press('Home');
    await expect
      .poll(() => slider.getAttribute('aria-valuetext'))
      .toBe('Row 1, left to right · 0 of 1,080 knots · 0 strands in use');
    await page.getByText(/^Next: attach Night, piece 1, at 1; 30 Night \(1-30\); /).waitFor();
    await slider.press('ArrowRight');
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toContain('Row 2, right to left · 30 of');
    await slider.press('PageUp');
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toContain('60 of');
    await page.getByRole('button', { name: 'Back by a row' }).click();
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toContain('30 of');
    await page.getByRole('button', { name: 'All tied' }).click();
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toBe('All tied: 1,080 of 1,080 knots');
  });

  it('tries a setting while it is written, keeps it as one step, and takes it back', async () => {
    const { page } = await planning();
    const before = await figure(page, 'Pieces', 'now');
    const field = page.getByRole('textbox', { name: 'Working length', exact: true });
    await field.fill('90');
    await expect.poll(() => figure(page, 'Pieces', 'last')).toMatch(/^\+\d+$/);
    await page.getByText('· saved').waitFor();
    await field.press('Enter');
    await page.getByText('· not saved').waitFor();
    const more = Number((await figure(page, 'Pieces', 'last')).slice(1));
    await isFullyPlanned(page);
    await expect.poll(() => figure(page, 'Pieces', 'now')).not.toBe(before);
    expect(more).toBeGreaterThan(10);
    const beside = page.getByRole('status', { name: 'What it takes' });
    const now = `${await figure(page, 'Pieces', 'now')} pieces, `;
    const change = `By the last change ${await figure(page, 'Pieces', 'last')} pieces, `;
    expect(await beside.textContent()).toContain(now);
    expect(await beside.textContent()).toContain(change);
    await chart(page).focus();
    await page.keyboard.press('Control+z');
    await page.getByText('Undone: Change the working length.').waitFor();
    expect(await field.inputValue()).toBe('152.4');
    await isFullyPlanned(page);
    await expect.poll(() => figure(page, 'Pieces', 'now')).toBe(before);
  });

  it('warns before the pieces are cut that a looser hand runs out, and keeps a share of each free at one press', async () => {
    const { page, path } = await planning();
    await page
      .getByRole('toolbar', { name: 'Shown in the middle' })
      .getByRole('button', { name: 'Bundles' })
      .click();
    await page
      .getByText(/some pieces run out, and \d+ short ones more are cut/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Keep 3 % of each piece free' }).click();
    await page.getByRole('button', { name: 'Keep 3 % of each piece free' }).waitFor({ state: 'detached' });
    await page.keyboard.press('Control+s');
    await page.getByText('· saved').waitFor();
    expect(designIn(path).tying.reserveShare).toBe(0.03);
  });

  it('keeps to a wish for few hanging strands, says what that takes, and forgets it where the field is emptied', async () => {
    const { page, path } = await planning();
    const before = designIn(path);
    const most = toldElsewhere(before).plan.totals.liveMax;
    const field = page.getByLabel('Hanging at once, at most', { exact: true });
    expect(await field.inputValue()).toBe('');
    // The first press of a button asks for one fewer than there are.
    await page.getByRole('button', { name: 'Hanging at once, at most: less' }).click();
    expect(await field.inputValue()).toBe(String(most - 1));
    await page.getByText(`at once, as you wish; else ${most} would.`).waitFor();
    const wishing = { ...before, tying: { ...before.tying, liveWish: most - 1 } };
    const { totals } = toldElsewhere(wishing).plan;
    await expect.poll(() => figure(page, 'Pieces', 'now')).toBe(String(totals.pieces));
    expect(await figure(page, 'Hanging at once', 'now')).toBe(String(totals.liveMax));
    await field.fill('');
    await page.keyboard.press('Enter');
    await expect.poll(() => figure(page, 'Hanging at once', 'now')).toBe(String(most));
    await page.getByText('as you wish').waitFor({ state: 'detached' });
  });

  it('says in which sight its colours are seen', async () => {
    const { page } = await planning();
    await page.keyboard.press('Control+2');
    await page.keyboard.press('F1');
    await page.keyboard.type('greys');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Control+3');
    await page.getByTitle('Colours in greys, as in print').getByText('greys', { exact: true }).waitFor();
  });

  it('obeys what is pinned by keys, lists it with what can’t be obeyed, and takes it back', async () => {
    const { page, at } = await drawing(designFromLetters(['aabba', 'aabba', 'aabba']));
    await page.getByRole('button', { name: 'Plan', exact: true }).click();
    await isFullyPlanned(page);
    const before = Number(await figure(page, 'Pieces', 'now'));
    const list = page.getByRole('list', { name: 'Pins' });
    await chart(page).focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('x');
    await list.getByRole('button', { name: 'Cut after row 1, cord 2', exact: true }).waitFor();
    await expect.poll(() => figure(page, 'Pieces', 'last')).toBe('+1');
    await page.keyboard.press('f');
    await page.getByText(/Now choose the knot that the strand goes on to/).waitFor();
    const knot = await at(0, 4);
    await page.mouse.click(knot.x, knot.y);
    await page.getByText('1 pin can’t be obeyed; the plan goes on without.').waitFor();
    await list.getByText(/another pin cuts the strand there/).waitFor();
    await page.getByRole('list', { name: 'Signs on the chart' }).getByText('can’t be obeyed').waitFor();
    await list.getByRole('button', { name: 'Remove: Cut after row 1, cord 2' }).click();
    await page.getByText(/^The plan obeys them/).waitFor();
    await page.getByRole('button', { name: 'Remove all pins' }).click();
    await page.getByText(/^Nothing is pinned: /).waitFor();
    await isFullyPlanned(page);
    expect(Number(await figure(page, 'Pieces', 'now'))).toBe(before);
    await chart(page).focus();
    await page.keyboard.press('Control+z');
    await page.getByText('Undone: Remove all pins.').waitFor();
    await list
      .getByRole('button', { name: 'Carry from row 1, cord 2 to row 1, cord 5', exact: true })
      .waitFor();
  });

  it('says why there is no plan, and what to do', async () => {
    const { page } = await planning();
    const field = page.getByRole('textbox', { name: 'Working length', exact: true });
    await field.fill('14');
    await page
      .getByText(/Make the working length/)
      .first()
      .waitFor();
    await field.press('Escape');
    await isFullyPlanned(page);
  });

  it('has a part with figures for each view, and goes to the rows that take the most', async () => {
    const { page, path } = await planning();
    const { liveMax } = toldElsewhere(designIn(path)).plan.totals;
    await chart(page).focus();
    await page.keyboard.press('h');
    await page.getByText(`At most ${liveMax} strands hang at the back at once`).waitFor();
    await page.keyboard.press('e');
    await page.getByText(/loose ends: two for each of/).waitFor();
    await page.keyboard.press('c');
    await page.getByText(/carries are longer|carry is longer|No carry is longer/).waitFor();
    await page.keyboard.press('w');
    const worst = page.getByRole('table', { name: 'The rows that take the most' }).getByRole('button', {
      name: /^Row \d+$/,
    });
    const row = (await worst.first().textContent())!;
    await worst.first().click();
    await page.getByText(new RegExp(`^${row}, cord`)).waitFor({ state: 'attached' });
  });

  it.each(['light', 'dark'] as const)(
    'is found sound by axe in the %s theme, in every view',
    async (colorScheme) => {
      const { page } = await planning({ colorScheme });
      await chart(page).focus();
      await page.keyboard.press('Enter');
      await page.keyboard.press('x');
      await page.getByRole('list', { name: 'Pins' }).waitFor();
      await page.evaluate(axeSource);
      for (const letter of ['s', 'h', 'e', 'c', 'w']) {
        await chart(page).focus();
        await page.keyboard.press(letter);
        const { violations } = await page.evaluate(() =>
          (window as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run(),
        );
        const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
        expect(serious.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join()}`)).toEqual(
          [],
        );
      }
    },
  );
});
