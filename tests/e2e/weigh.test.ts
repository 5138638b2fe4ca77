import { describe, expect, it } from 'vitest';
import { variationOf } from '../../renderer/plan/what-if/change.ts';
import { flatten } from '../../shared/chart/chart.ts';
import { layOutPattern } from '../../shared/pattern/lay-out-pattern.ts';
import { plainItems } from '../../shared/pattern/page/plain-items.ts';
import { careWords } from '../../shared/pattern/words/care-words.ts';
import { formatMass } from '../../shared/units/mass.ts';
import { formatTime } from '../../shared/units/time.ts';
import { formatUncertain } from '../../shared/units/uncertain.ts';
import { formatYarnLength } from '../../shared/units/yarn-length.ts';
import { cells, design, materialsFor, planning, planOf, turnTo, write } from './planning.ts';
import { runCommand } from './run-command.ts';

describe('the materials', () => {
  it('are those of the JSON and the pattern, with the formula beside each price', async () => {
    const { page, savedDesign, errors } = await planning();
    await turnTo(page, 'Materials');
    for (const { name } of design.yarns.slice(0, 4)) await write(page, `Price of a skein of ${name}`, '4.5');
    await write(page, `Skeins of ${design.yarns[0]!.name} that you own`, '0.05');
    await write(page, 'Price of cord', '0.4');
    await write(page, 'Price of the dowel', '6');
    await write(page, 'Your pay', '18');
    await write(page, 'Overhead', '12');
    await write(page, 'Retail: wholesale, times', '2.2');
    const saved = await savedDesign();
    const materials = materialsFor(saved);
    const { cost, totals, yarns } = materials;
    const length = (mm: number) => formatYarnLength(mm, 'metric', { enough: true });
    for (const need of yarns) {
      const row = await cells(page, need.name);
      expect(row[0]).toBe(`${length(need.cutMm)}${formatUncertain(need.uncertain.usedMm, length)}`);
      expect(row[1]).toContain(length(need.withMarginMm));
      expect(row[3]).toBe(String(need.toBuySkeins));
    }
    const { parts } = cost;
    const amounts = { ...parts, materials: cost.materials, labour: cost.labour };
    for (const { formula } of [...Object.values(amounts), cost.overhead, cost.wholesale, cost.retail])
      expect(await page.getByText(formula, { exact: true }).count(), formula).toBe(1);
    await page.getByText(formatTime(totals.seconds), { exact: true }).first().waitFor();
    const mass = formatUncertain(totals.uncertain.massG, (g) => formatMass(g, 'metric', { enough: true }));
    await page.getByText(careWords.en.hangingUp(mass).text).waitFor();
    const pattern = layOutPattern({
      design: saved,
      chart: flatten(saved),
      plan: planOf(saved),
      materials,
      paper: 'a4',
      units: 'metric',
    });
    const printed = pattern.pages.flatMap(({ items }) =>
      plainItems(items).flatMap((item) => (item.kind === 'text' ? [item.text] : [])),
    );
    for (const { cutMm } of yarns) expect(printed).toContain(length(cutMm));
    expect(errors).toEqual([]);
  });

  it('plan nothing anew where only a price changes, and every price is a step of its own', async () => {
    const { page, savedDesign } = await planning();
    await turnTo(page, 'Materials');
    await write(page, 'Price of the dowel', '6');
    await page.getByText('Dowel = 6.00', { exact: true }).waitFor();
    expect(await page.getByText('The full plan.').count()).toBe(1);
    await write(page, 'Price of the dowel', 'much');
    await page.getByText('Write a number from 0 to 1000000.').waitFor();
    await page.keyboard.press('Escape');
    await page.getByLabel('Price of the dowel').blur();
    await page.getByText('Dowel = 6.00', { exact: true }).waitFor();
    await page.getByRole('region', { name: 'Materials' }).focus();
    await page.keyboard.press('Control+z');
    await page.getByText('Dowel = 6.00', { exact: true }).waitFor({ state: 'detached' });
    expect((await savedDesign()).money).toBeUndefined();
  });

  it('are told in yards, and cord is bought by the yard, where the maker measures so', async () => {
    const { page, savedDesign } = await planning();
    await runCommand(page, 'settings');
    await page.getByLabel('US', { exact: true }).check();
    await page.getByRole('button', { name: 'Done' }).click();
    await turnTo(page, 'Materials');
    await write(page, 'Price of cord', '0.5');
    // 1 yd = 0.9144 m exactly: international yard and pound agreement, 1959.
    expect((await savedDesign()).money?.cordPricePerM).toBeCloseTo(0.5 / 0.9144, 9);
    await page.getByText(/^Cord = [\d.]+ yd × 0\.50 = /).waitFor();
    expect((await cells(page, design.yarns[0]!.name))[0]).toMatch(/ yd ± /);
  });
});

describe('figures that are written on the Plan screen', () => {
  it('stay as they were written where they can’t be used, say what is possible, and change nothing', async () => {
    const { page, savedDesign } = await planning();
    const faultOf = async (label: string) => {
      const field = page.getByLabel(label, { exact: true });
      expect(await field.getAttribute('aria-invalid')).toBe('true');
      const [, hint] = ((await field.getAttribute('aria-describedby')) ?? '').split(' ');
      return page.locator(`[id="${hint}"]`).textContent();
    };
    await write(page, 'Working length', '0,1');
    await write(page, 'Tail', 'much');
    await write(page, 'Carry at most, across', '2.5');
    expect(await faultOf('Working length')).toMatch(
      /^A piece of 1 mm can't hold one knot of .*at least .* cm, or the tails shorter\.$/,
    );
    expect(await faultOf('Tail')).toBe('Write a number from 0 to 10000 cm.');
    expect(await faultOf('Carry at most, across')).toBe('Only a whole number will do: 2 or 3 cords.');
    await page.getByText('The full plan.').waitFor();
    await turnTo(page, 'Materials');
    await write(page, 'Your pay', 'x');
    await page.getByRole('region', { name: 'Materials' }).click({ position: { x: 4, y: 4 } });
    expect(await faultOf('Your pay')).toBe('Write a number from 0 to 1000000.');
    expect(await savedDesign()).toEqual({ ...design, title: 'Drawn' });
    await turnTo(page, 'Sizes');
    await page.getByLabel('Cord in mm').fill('4');
    await page.getByRole('columnheader', { name: 'With 4 mm cord' }).waitFor();
    await page.getByLabel('Cord in mm').fill('40');
    await page.getByText('That is too much: write at most 30.').waitFor();
    expect(await page.getByRole('button', { name: 'Grade the design' }).isDisabled()).toBe(true);
    await write(page, 'Working length', '60,5');
    await page.getByLabel('Working length', { exact: true }).press('Enter');
    expect((await savedDesign()).tying).toEqual({ ...design.tying, workingLengthMm: 605 });
  });

  it('are asked for in inches, yards and ounces where the maker measures so', async () => {
    const { page, savedDesign } = await planning();
    await runCommand(page, 'settings');
    await page.getByLabel('US', { exact: true }).check();
    await page.getByRole('button', { name: 'Done' }).click();
    await turnTo(page, 'Sizes');
    expect(await page.getByLabel(/ in (mm|cm)$/).count()).toBe(0);
    await page.getByLabel('Cord in inches').fill('0.157');
    await page.getByText('5/32 in, 4 mm').waitFor();
    await page.keyboard.press('Control+2');
    await runCommand(page, 'This hanging');
    const dialog = page.getByRole('dialog', { name: 'This hanging' });
    expect(await dialog.getByText(/ in (mm|cm)\b|metre|10 cm/).count()).toBe(0);
    await dialog.getByLabel('Dowel thickness in inches').fill('3/4');
    await dialog.getByLabel('Cord, ounces a yard').fill('0.2');
    await dialog.getByRole('button', { name: 'Done' }).click();
    const { dowel, cord } = await savedDesign();
    // 1 in = 25.4 mm, 1 yd = 0.9144 m, 1 oz = 28.349523125 g exactly: yard and pound agreement, 1959.
    expect(dowel.diameterMm).toBeCloseTo(19.05, 9);
    expect(cord.gPerM).toBeCloseTo((0.2 * 28.349523125) / 0.9144, 9);
  });
});

describe('what if', () => {
  it('weighs variants with the planner’s own figures, and takes one as one step', async () => {
    const { page, savedDesign } = await planning();
    await turnTo(page, 'What if');
    await page.getByLabel('Pieces, in cm').fill('60');
    await page.getByRole('button', { name: 'Add a variant' }).click();
    await page.getByRole('columnheader', { name: /lone knots tidied/ }).waitFor();
    await page.getByText('Full plans.').waitFor();
    const short = variationOf(design, [{ kind: 'working-length', mm: 600 }]);
    const tidy = variationOf(design, [{ kind: 'tidy' }]);
    if (!short.ok || !tidy.ok) throw new Error('both can be made');
    const expected = [design, short.value.design, tidy.value.design].map((each) => planOf(each).totals);
    await expect
      .poll(async () => {
        const row = await cells(page, 'Pieces');
        return [row[0], row[1], row[3]].map((cell) => Number(/^\d+/.exec(cell ?? '')?.[0]));
      })
      .toEqual(expected.map(({ pieces }) => pieces));
    const live = (await cells(page, 'Hanging at once')).map((cell) => Number(/^\d+/.exec(cell)?.[0]));
    expect([live[0], live[1], live[3]]).toEqual(expected.map(({ liveMax }) => liveMax));
    await page.getByRole('button', { name: 'Take A' }).click();
    await page.getByText('The hanging is A now.').waitFor();
    expect((await savedDesign()).tying.workingLengthMm).toBe(600);
    await page.keyboard.press('Control+z');
    expect((await savedDesign()).tying).toEqual(design.tying);
  });

  it('takes another gauge as one that is told: the swatches stay, and removing it brings their gauge back', async () => {
    const swatch = { widthMm: 100, cords: 20, heightMm: 100, rows: 21 };
    const { page, savedDesign } = await planning({ ...design, swatches: [swatch] });
    await turnTo(page, 'What if');
    await page.getByRole('region', { name: 'Variant A' }).getByLabel('And also').selectOption('gauge');
    await page.getByRole('columnheader', { name: /told, not measured/ }).waitFor();
    await page.getByRole('button', { name: 'Take A' }).click();
    await page.getByText('The hanging is A now.').waitFor();
    expect((await savedDesign()).swatches).toMatchObject([swatch, { told: true }]);
    await turnTo(page, 'Swatches');
    await page.getByRole('cell', { name: /^As you wrote it, not measured/ }).waitFor();
    await page.getByRole('button', { name: 'Remove the gauge as written' }).click();
    await page.getByRole('cell', { name: /^Measured on one swatch/ }).waitFor();
    expect((await savedDesign()).swatches).toEqual([swatch]);
  });

  it('says why a variant can’t be, and joins changes in one', async () => {
    const { page } = await planning();
    await turnTo(page, 'What if');
    const first = page.getByRole('region', { name: 'Variant A' });
    await first.getByLabel('Pieces, in cm').fill('10');
    await first.getByText(/can't hold one knot/).waitFor();
    // What can't be tied can't be taken.
    await page.getByRole('button', { name: 'Take A' }).waitFor({ state: 'detached' });
    await first.getByLabel('Pieces, in cm').fill('120');
    await page.getByRole('button', { name: 'Take A' }).waitFor();
    await first.getByLabel('And also').selectOption('merge');
    await page.getByRole('columnheader', { name: /pieces of 120 cm, .* merged into / }).waitFor();
    await page.getByRole('button', { name: 'Remove variant B' }).click();
    expect(await page.getByRole('region', { name: /^Variant/ }).count()).toBe(1);
  });
});
