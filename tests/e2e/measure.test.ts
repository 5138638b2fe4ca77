/** Measuring and cutting on the Plan screen: steps, bundles, swatches, sizes; and that all its leaves are within reach. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import { bundlesOf } from '../../shared/materials/bundles/bundles.ts';
import { fittedPlan, usualFitting } from '../../shared/materials/bundles/fitted-plan.ts';
import { stepWords } from '../../shared/tying/steps/step-words.ts';
import { stepsOfRow } from '../../shared/tying/steps/steps-of-row.ts';
import { tyingOrder } from '../../shared/tying/steps/tying-order.ts';
import { formatUncertain } from '../../shared/units/uncertain.ts';
import { formatYarnLength, yarnLengthDifference } from '../../shared/units/yarn-length.ts';
import { drawing } from './drawing.ts';
import { seriousFindings } from './findings.ts';
import { cells, design, isFullyPlanned, materialsFor, planning, planOf, turnTo, write } from './planning.ts';
import { readPdf } from './read-pdf.ts';
import { runCommand } from './run-command.ts';

async function addSwatch(page: Page, figures: Readonly<Record<string, string>>): Promise<void> {
  await page.getByRole('button', { name: 'Add a swatch…' }).click();
  for (const [label, text] of Object.entries(figures))
    await page.getByLabel(label, { exact: true }).fill(text);
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
}

const size = { 'Width in cm': '10', 'over cords': '20', 'Height in cm': '9.6', 'over rows': '20' };
const whole = { ...size, 'Yarn in cm': '190', 'over knots': '60' };

describe('the steps', () => {
  it('are those of the row at the slider, in short and in sentences', async () => {
    const { page } = await planning();
    await page.getByRole('button', { name: 'From the first row' }).click();
    for (let row = 1; row < 4; row++)
      await page.getByRole('button', { name: 'Tie to the end of the row' }).click();
    const list = page.getByRole('region', { name: 'Steps of row 4' });
    await list.waitFor();
    const steps = stepsOfRow(tyingOrder(flatten(design), planOf(design)), 4);
    const yarnsById = new Map(design.yarns.map((yarn) => [yarn.id, yarn]));
    const words = (form: 'compact' | 'long') =>
      steps.map((step) => stepWords(step, { yarnsById, units: 'metric', form }));
    expect(await list.getByRole('listitem').allTextContents()).toEqual(words('compact'));
    expect(await list.locator('[aria-current="step"]').textContent()).toBe(words('compact')[0]);
    await page.getByRole('button', { name: 'In sentences' }).click();
    expect(await list.getByRole('listitem').allTextContents()).toEqual(words('long'));
  });

  it('take the hanging to themselves, by keys too', async () => {
    const { page } = await planning();
    await page.getByRole('button', { name: 'From the first row' }).click();
    for (let row = 1; row < 3; row++)
      await page.getByRole('button', { name: 'Tie to the end of the row' }).click();
    const list = page.getByRole('region', { name: 'Steps of row 3' });
    await list.waitFor();
    // The third run of the row: three of the ground, then one, then four.
    const steps = stepsOfRow(tyingOrder(flatten(design), planOf(design)), 3);
    const third = steps.filter(({ kind }) => kind === 'knots')[2]!;
    await list.getByRole('button').first().focus();
    for (let i = 0; i < third.index; i++) await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByText(/^Row 3, left to right · 28 of 72 knots/).waitFor();
  });
});

describe('the bundles', () => {
  it('are those of the plan, cut at the working length or to measure', async () => {
    const { page } = await planning();
    const chart = flatten(design);
    const plan = planOf(design);
    const { bundles, pieces, totalMm } = bundlesOf(tyingOrder(chart, plan));
    const fitted = bundlesOf(tyingOrder(chart, fittedPlan(plan, usualFitting)));
    await turnTo(page, 'Bundles');
    const length = (mm: number) => formatYarnLength(mm, 'metric', { enough: true });
    await page.getByText(`${pieces} pieces of 4 yarns: ${length(totalMm)}.`).waitFor();
    expect(await page.getByRole('checkbox').count()).toBe(bundles.length);
    await page
      .getByText(`takes ${formatYarnLength(fitted.savedMm, 'metric', { spare: true })} less`)
      .waitFor();
    await page.getByLabel(/to measure/).check();
    await page.getByText(`${pieces} pieces of 4 yarns: ${length(fitted.totalMm)}.`).waitFor();
    expect(await page.getByRole('checkbox').count()).toBe(fitted.bundles.length);
    // What is bought is what is cut, and it is compared with how it was cut before.
    const less = yarnLengthDifference(totalMm, fitted.totalMm, 'metric', { enough: true });
    const takes = page.getByRole('row', { name: /^Yarn to cut/ }).getByRole('cell');
    await expect
      .poll(async () => (await takes.allTextContents()).slice(0, 2))
      .toEqual([length(fitted.totalMm), less]);
    await turnTo(page, 'Materials');
    const together = (await cells(page, 'Together'))[0];
    expect(together).toContain(length(fitted.totalMm));
  });

  it('are ticked off, stay so when the design is opened again, and say what another plan has no use for', async () => {
    const { page, savedDesign } = await planning();
    await turnTo(page, 'Bundles');
    await page.getByRole('checkbox').first().check();
    const told = await page.getByText(/^Cut: [1-9]/).textContent();
    // Whoever undoes a stroke has not sewn a piece together again.
    await page.getByRole('region', { name: 'Bundles', exact: true }).focus();
    await page.keyboard.press('Control+z');
    await page.getByText('not saved').waitFor();
    const { bundles } = await savedDesign();
    expect(bundles?.cut).toHaveLength(1);
    await page.getByRole('banner').getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Open Drawn' }).click();
    await page.getByRole('application').waitFor();
    await page.keyboard.press('Control+3');
    await isFullyPlanned(page);
    await turnTo(page, 'Bundles');
    await expect.poll(() => page.getByText(/^Cut: /).textContent()).toBe(told);
    await page.getByLabel('Working length', { exact: true }).fill('120');
    await page.keyboard.press('Enter');
    const spare = page.getByText(/^Cut for another plan, .* at 152\.4 cm\. /);
    await spare.waitFor();
    await page.getByText(/^Cut: 0 of /).waitFor();
    await page.getByRole('button', { name: 'Forget them' }).click();
    await spare.waitFor({ state: 'detached' });
    expect((await savedDesign()).bundles).toBeUndefined();
  });

  it('have labels to print', async () => {
    const { page, folder, savedDesign, errors, foreignRequests, logged } = await planning();
    await turnTo(page, 'Bundles');
    await page.getByLabel('Letter').check();
    await page.getByRole('button', { name: 'Print labels…' }).click();
    await page.getByRole('button', { name: 'Folders', exact: true }).click();
    await page.getByRole('button', { name: 'Pictures and patterns' }).click();
    await page.getByLabel('Name', { exact: true }).fill('Labels.pdf');
    await page.getByRole('button', { name: 'Save here' }).click();
    await page.getByText('Labels.pdf: 1 page of labels.').waitFor();
    await page.getByText('The labels printed last are of just these bundles.').waitFor();
    expect((await savedDesign()).bundles?.plan?.rows).toHaveLength(design.rows);
    await page.getByRole('button', { name: 'Plan anew' }).click();
    expect((await savedDesign()).bundles).toBeUndefined();
    await page.keyboard.press('Control+z');
    await page.getByText('The labels printed last are of just these bundles.').waitFor();
    await page.getByLabel(/to measure/).check();
    await page.getByText(/has changed since labels were printed: they no longer fit/).waitFor();
    const { pages } = await readPdf(readFileSync(join(folder, 'Labels.pdf')));
    for (const { name } of design.yarns.slice(0, 4)) expect(pages.join(' ')).toContain(name);
    expect([errors, foreignRequests, logged]).toEqual([[], [], []]);
  });
});

describe('swatches', () => {
  it('make the gauge, as the JSON tells it, and each is one step', async () => {
    const { page, savedDesign } = await planning();
    await turnTo(page, 'Swatches');
    await page.getByText('No swatch yet').waitFor();
    await addSwatch(page, whole);
    await page.getByText('that swatches scatter by 1.5 % is a value from memory').first().waitFor();
    await addSwatch(page, { ...whole, 'Width in cm': '9.6' });
    await addSwatch(page, whole);
    await page.getByText('It is 4 % tighter across than the others.').waitFor();
    await isFullyPlanned(page);
    const saved = await savedDesign();
    expect(saved.swatches).toHaveLength(3);
    const { gauge, totals } = materialsFor(saved);
    const [figure, basis] = await cells(page, 'Cords across');
    expect(figure).toMatch(/^20\.3 per 10 cm ± /);
    expect(basis).toBe(gauge.basis.size.sentence);
    const length = (mm: number) => formatYarnLength(mm, 'metric', { enough: true });
    const yarn = formatUncertain(totals.uncertain.yarnUsedMm, length);
    await expect.poll(async () => (await cells(page, 'Yarn used'))[0]).toBe(yarn);
    await page.getByRole('button', { name: 'Remove Swatch 2' }).click();
    await expect.poll(() => page.getByRole('button', { name: /^Remove Swatch/ }).count()).toBe(2);
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.getByRole('button', { name: /^Remove Swatch/ }).count()).toBe(3);
  });

  it('show what comes of them while they are written, and nothing is kept of one that is dropped', async () => {
    const { page, savedDesign } = await planning();
    await turnTo(page, 'Swatches');
    await page.getByRole('button', { name: 'Add a swatch…' }).click();
    const dialog = page.getByRole('dialog', { name: 'Add a swatch' });
    await dialog.getByText('Measure its width').waitFor();
    expect(await dialog.getByRole('button', { name: 'Done' }).isDisabled()).toBe(true);
    for (const [label, text] of Object.entries({ ...size, 'Width in cm': '20' }))
      await page.getByLabel(label, { exact: true }).fill(text);
    await dialog.getByText('10 per 10 cm ± 3 %').waitFor();
    await page.getByLabel('Width in cm').fill('100');
    await dialog.getByText(/Look at the units/).waitFor();
    await page.getByLabel('Yarn in cm').fill('190');
    await dialog.getByText('Yarn and knots belong together').waitFor();
    await page.keyboard.press('Escape');
    await page.getByText('No swatch yet').waitFor();
    expect((await savedDesign()).swatches).toEqual([]);
  });

  it('are reached from the hanging’s gauge', async () => {
    const { page } = await drawing(design);
    await runCommand(page, 'this hanging');
    await page.getByRole('button', { name: 'Swatches…' }).click();
    await page.getByRole('region', { name: 'Swatches', exact: true }).waitFor();
  });

  it('are made as small designs, and what is unsaved is asked for first', async () => {
    const { page, savedDesign } = await planning();
    await turnTo(page, 'Materials');
    await write(page, 'Your pay', '15');
    await turnTo(page, 'Swatches');
    await page.getByRole('button', { name: 'Make me a swatch…' }).click();
    await page
      .getByRole('dialog')
      .getByText(/count its knots/)
      .waitFor();
    await page.getByRole('button', { name: 'Open the swatch' }).click();
    await page.getByRole('button', { name: 'Save', exact: true }).last().click();
    await page.getByText('Swatch for Drawn').waitFor();
    expect(await page.getByRole('application').getAttribute('aria-label')).toMatch(
      /20 cords and 20 rows|Chart/,
    );
    await page.keyboard.press('Control+1');
    await page.getByRole('button', { name: 'Open Drawn' }).click();
    await page.getByRole('button', { name: 'Leave without saving' }).click();
    expect((await savedDesign()).money).toEqual({ hourlyRate: 15 });
  });
});

describe('sizes', () => {
  it('say what fits on which dowel', async () => {
    const { page } = await planning();
    await turnTo(page, 'Sizes');
    // The heads of 6 cut cords, 4 x 3 mm each, are wider than 12 cords of 5 mm; with two overhangs of 51 mm: 174 mm.
    await page.getByText('This hanging wants at least 17.5 cm').waitFor();
    expect(await cells(page, '30 cm')).toEqual([
      '32 cords, surely 30',
      '16 cm',
      'fits, 11.4 cm free at each end',
    ]);
    await page.getByLabel('A dowel of your own, in cm').fill('15');
    expect((await cells(page, '15 cm')).at(-1)).toBe('too short: only 3.9 cm free at each end');
    await page.getByRole('button', { name: 'Resize to 8 cords…' }).click();
    const dialog = page.getByRole('dialog', { name: 'Resize' });
    expect(await dialog.getByLabel('Cords', { exact: true }).inputValue()).toBe('8');
    expect(await dialog.getByLabel('Rows', { exact: true }).inputValue()).toBe('6');
  });

  it('lead from a finished size to the resize sheet, with its cords and rows', async () => {
    const { page } = await planning();
    await turnTo(page, 'Sizes');
    await page.getByLabel('Width in cm').fill('10');
    await page.getByText('20 cords and 6 rows: about 10 cm wide').waitFor();
    await page.getByRole('button', { name: 'Resize…' }).click();
    const dialog = page.getByRole('dialog', { name: 'Resize' });
    expect(await dialog.getByLabel('Cords', { exact: true }).inputValue()).toBe('20');
    await dialog.getByRole('button', { name: 'Resize', exact: true }).click();
    await page.getByText('20 cords and 6 rows now.').waitFor();
  });

  it('grade the design to another cord and yarn, as one step', async () => {
    const { page, savedDesign } = await planning();
    await turnTo(page, 'Sizes');
    await page.getByLabel('Cord in mm').fill('4');
    await page.getByLabel('Ground yarn in mm').fill('3');
    await page.getByText('Full plans.').waitFor();
    const [before, after] = await cells(page, 'Width');
    // p = D + 2 d x 0.5: 12 cords of 5 mm, and of 7 mm.
    expect(before).toBe('6 cm');
    expect(after).toMatch(/^8\.4 cm\+2\.4 cm$/);
    await page.getByRole('button', { name: 'Grade the design' }).click();
    await page.getByText(/Graded to 4 mm cord and 3 mm yarn/).waitFor();
    const graded = await savedDesign();
    expect(graded.cord.diameterMm).toBe(4);
    expect(graded.yarns.map(({ diameterMm }) => diameterMm)).toEqual(design.yarns.map(() => 3));
    await page.keyboard.press('Control+z');
    expect((await savedDesign()).cord).toEqual(design.cord);
  });
});

describe.each([
  { colorScheme: 'light', width: 1280, height: 800 },
  { colorScheme: 'dark', width: 1920, height: 1080 },
] as const)('at $width × $height, $colorScheme, nothing serious is found', (view) => {
  it('on any leaf, nor in its dialogs', async () => {
    const swatch = { widthMm: 100, cords: 20, heightMm: 96, rows: 20 };
    const measured = { ...design, swatches: [swatch, { ...swatch, widthMm: 97 }], money: { hourlyRate: 15 } };
    const { page } = await planning(measured, view);
    await page.getByRole('button', { name: 'From the first row' }).click();
    await page.getByRole('region', { name: 'Steps of row 1' }).waitFor();
    for (const leaf of [
      'Chart',
      'Tying order',
      'Swatches',
      'Sizes',
      'Bundles',
      'Materials',
      'What if',
    ] as const) {
      await turnTo(page, leaf);
      if (leaf === 'What if') await page.getByText('Full plans.').waitFor();
      expect(await seriousFindings(page), leaf).toEqual([]);
      const isTooWide = await page.evaluate(() => {
        const leafPage = document.querySelector('.plan-leaf');
        return leafPage !== null && leafPage.scrollWidth > leafPage.clientWidth;
      });
      expect(isTooWide, leaf).toBe(false);
    }
    await turnTo(page, 'Swatches');
    for (const name of ['Add a swatch…', 'Change Swatch 1', 'Make me a swatch…']) {
      await page.getByRole('button', { name }).click();
      await page.getByRole('dialog').waitFor();
      expect(await seriousFindings(page), name).toEqual([]);
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
    }
  });
});

it('the command list turns to every leaf, and a view of the chart back to it', async () => {
  const { page, errors } = await planning();
  for (const words of ['plan sizes', 'plan bundles', 'plan materials', 'plan what if', 'go swatches']) {
    await runCommand(page, words);
    expect(errors, words).toEqual([]);
  }
  await page.getByRole('region', { name: 'Swatches', exact: true }).waitFor();
  await runCommand(page, 'plan worst rows');
  await page.getByRole('application').waitFor();
});
