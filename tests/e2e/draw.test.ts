/** Drawing on the hanging as a person does: by pointer, fingers and keys, and what is then on the screen. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { newDesign } from '../../shared/design/new-design.ts';
import { alphabet } from '../../shared/yarn/symbols.ts';
import { designFromLetters } from '../notation.ts';
import { drag, drawing, outline } from './drawing.ts';
import { fingersOn } from './fingers.ts';

const plain = ['aaaaaaaa', 'aaaaaaaa', 'aaaaaaaa', 'aaaaaaaa', 'aaaaaaaa', 'aaaaaaaa'];

describe('with the pointer', () => {
  it('each tool does what it says, as one step', async () => {
    const { page, at, saved } = await drawing(designFromLetters(plain));
    await drag(page, await at(0, 0), await at(0, 7));
    await page.getByRole('button', { name: 'Rectangle', exact: true }).click();
    await drag(page, await at(5, 4), await at(3, 1));
    await page.getByRole('button', { name: 'Line', exact: true }).click();
    await drag(page, await at(1, 7), await at(5, 7));
    await page.getByRole('button', { name: 'Unpick', exact: true }).click();
    await drag(page, await at(4, 2), await at(4, 3));
    expect(await saved()).toEqual(['bbbbbbbb', 'aaaaaaab', 'aaaaaaab', 'abbbbaab', 'ab--baab', 'abbbbaab']);
    await page.getByRole('button', { name: 'Match', exact: true }).click();
    const ground = await at(2, 2);
    await page.mouse.click(ground.x, ground.y);
    await page.getByRole('button', { name: 'Fill', exact: true }).click();
    const bare = await at(4, 2);
    await page.mouse.click(bare.x, bare.y);
    expect((await saved())[4]).toBe('abaabaab');
    for (let i = 0; i < 5; i++) await page.keyboard.press('Control+z');
    expect(await saved()).toEqual(plain);
  });

  it('the right button does nothing, Escape takes a stroke back, and Space moves the hanging', async () => {
    const { page, at, saved } = await drawing(designFromLetters(plain));
    const [from, to] = [await at(1, 1), await at(1, 5)];
    await page.mouse.click(from.x, from.y, { button: 'right' });
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y);
    await page.keyboard.press('Escape');
    await page.mouse.move(to.x, to.y + 40);
    await page.mouse.up();
    await page.mouse.move(from.x, from.y);
    await page.keyboard.down('Space');
    await drag(page, from, { x: from.x + 60, y: from.y + 30 });
    await page.keyboard.up('Space');
    expect(await saved()).toEqual(plain);
    const moved = await at(1, 1);
    expect([moved.x - from.x, moved.y - from.y]).toEqual([60, 30]);
  });

  it('Control with the wheel zooms where the pointer is, and the whole hanging comes back', async () => {
    const { page, at } = await drawing(designFromLetters(plain));
    const place = await at(4, 6);
    await page.mouse.move(place.x, place.y);
    await page.keyboard.down('Control');
    await page.mouse.wheel(0, -300);
    await page.keyboard.up('Control');
    await page.getByText('Row 5 →, cord 7').waitFor();
    const zoomed = (await outline(page).boundingBox())!;
    expect(zoomed.x).toBeLessThanOrEqual(place.x);
    expect(zoomed.x + zoomed.width).toBeGreaterThanOrEqual(place.x);
    await page.keyboard.press('Control+0');
    const back = await at(4, 6);
    expect([back.x, back.y]).toEqual([place.x, place.y]);
  });
});

describe('with fingers', () => {
  it('one draws; two move and zoom, and take back what the first had begun', async () => {
    const { page, at, saved } = await drawing(designFromLetters(plain));
    const touch = await fingersOn(page);
    const [a, b] = [await at(2, 1), await at(2, 5)];
    await touch('touchStart', [a.x, a.y]);
    await touch('touchMove', [b.x, b.y]);
    await touch('touchEnd');
    const drawn = [...plain.slice(0, 2), 'abbbbbaa', ...plain.slice(3)];
    expect(await saved()).toEqual(drawn);

    const before = await at(0, 0);
    await touch('touchStart', [a.x, a.y]);
    await touch('touchMove', [a.x, a.y + 30]);
    await touch('touchStart', [a.x, a.y + 30], [b.x, b.y + 30]);
    await touch('touchMove', [a.x - 40, a.y + 30], [b.x + 40, b.y + 30]);
    await touch('touchEnd');
    expect(await saved()).toEqual(drawn);
    const after = await at(0, 0);
    expect(after.x).toBeLessThan(before.x);
  });
});

describe('with keys alone', () => {
  it('moves a cell cursor, says where it is, draws, and drops what was begun', async () => {
    const { page, saved } = await drawing(designFromLetters(plain));
    const chart = page.getByRole('application');
    await chart.focus();
    for (const key of ['ArrowDown', 'End', 'Enter']) await page.keyboard.press(key);
    await page.getByText('Row 2, cord 8, Dusk').waitFor({ state: 'attached' });
    await page.keyboard.press('l');
    for (const key of ['Home', 'Space', 'ArrowRight', 'ArrowRight', 'Escape']) await page.keyboard.press(key);
    await page.getByText('Dropped.').waitFor({ state: 'attached' });
    for (const key of ['Space', 'Control+ArrowDown', 'Space']) await page.keyboard.press(key);
    // From row 2, cord 3 straight down to the last row.
    expect(await saved()).toEqual(['aaaaaaaa', 'aabaaaab', 'aabaaaaa', 'aabaaaaa', 'aabaaaaa', 'aabaaaaa']);
    await page.keyboard.press('.');
    await page.getByRole('button', { name: 'Tide', pressed: true }).waitFor();
  });

  it('letters choose no tool where the settings say so', async () => {
    const { page } = await drawing(designFromLetters(plain));
    await page.keyboard.press('Control+,');
    await page.getByLabel('Single letters choose tools').uncheck();
    await page.getByRole('button', { name: 'Done' }).click();
    await page.getByRole('application').focus();
    await page.keyboard.press('f');
    await page.getByRole('button', { name: 'Knot', exact: true, pressed: true }).waitFor();
  });
});

describe('what is on the screen', () => {
  const chartCanvas = (page: Page) =>
    page.evaluate(() =>
      [...document.querySelectorAll<HTMLCanvasElement>('.room canvas')].map((canvas) => canvas.toDataURL()),
    );

  it.each([
    ['cells of 2 pixels', 220, 'Control+0', false],
    ['knots', 220, 'Control+=', false],
    ['symbols', 220, 'Control+=', true],
  ] as const)('after edits is what a fresh drawing would be: %s', async (_, size, zoom, symbols) => {
    const row = 'ab-c'.repeat(size / 4);
    const { page } = await drawing(designFromLetters(Array.from({ length: size }, () => row)));
    const chart = page.getByRole('application');
    await chart.focus();
    if (symbols) await page.keyboard.press('s');
    for (let i = 0; i < (zoom === 'Control+0' ? 1 : 8); i++) await page.keyboard.press(zoom);
    await page.waitForTimeout(600);
    const room = (await chart.boundingBox())!;
    const [x, y] = [room.x + room.width / 2, room.y + room.height / 2];
    const before = await chartCanvas(page);
    await drag(page, { x: x - 40, y }, { x: x + 45, y: y + 30 });
    await page.keyboard.press('u');
    await drag(page, { x: x - 40, y: y + 40 }, { x: x + 45, y: y + 40 });
    await page.keyboard.press('r');
    await drag(page, { x: x - 60, y: y - 50 }, { x: x + 60, y: y - 10 });
    await page.waitForTimeout(100);
    const patched = await chartCanvas(page);
    // Another look and back: bitmap and tiles are made anew from the chart.
    await page.keyboard.press('s');
    await page.keyboard.press('s');
    await page.waitForTimeout(600);
    expect(patched).not.toEqual(before);
    expect(await chartCanvas(page)).toEqual(patched);
  });
});

describe('the yarns', () => {
  it('can be added, named, made the ground, replaced, merged and removed, each undone again', async () => {
    const { page, saved, shelf } = await drawing(designFromLetters(['aabbcc', 'aabbcc']));
    const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
    const yarns = page.getByRole('complementary', { name: 'Yarns' });
    const names = () => yarns.locator('.name').allTextContents();
    const before = await names();

    await press('Add…');
    await page.getByLabel('Name', { exact: true }).fill('Ροδόχρουν');
    await page.getByLabel('Colour as #rrggbb').fill('#C06070');
    await press('Done');
    expect(await names()).toEqual([...before.slice(0, -1), 'Ροδόχρουν', 'Bare cord']);

    await yarns.getByRole('button', { name: /^Tide/ }).click();
    await press('Replace…');
    await page.getByRole('dialog').getByRole('combobox').selectOption('Ροδόχρουν');
    await page.getByRole('dialog').getByRole('button', { name: 'Replace everywhere' }).click();
    expect(await saved()).toEqual(['aabbgg', 'aabbgg']);

    await yarns.getByRole('button', { name: /^Linen/ }).click();
    await press('Remove');
    await page.getByText('is the ground. Choose another yarn as ground').waitFor();
    await press('I see');
    await press('Merge…');
    await page.getByRole('dialog').getByRole('combobox').selectOption('Dusk');
    await page.getByRole('dialog').getByRole('button', { name: 'Merge' }).click();
    expect(await saved()).toEqual(['bbbbgg', 'bbbbgg']);
    await yarns.getByRole('button', { name: /^Dusk.*ground/ }).waitFor();

    await yarns.getByRole('button', { name: /^Ροδόχρουν/ }).click();
    await press('Ground');
    await yarns.getByRole('button', { name: /^Ροδόχρουν.*ground/ }).waitFor();
    await yarns.getByRole('button', { name: /^Coal/ }).click();
    await press('Remove');
    expect(await names()).not.toContain('Coal');

    for (let i = 0; i < 5; i++) await press('Undo');
    expect(await names()).toEqual(before);
    expect(await saved()).toEqual(['aabbcc', 'aabbcc']);
    expect(readFileSync(join(shelf, 'Drawn.larkrow'), 'utf8')).not.toContain('Ροδόχρουν');
  });

  it('64 with the longest names still leave everything in its place', async () => {
    const base = newDesign({ title: 'Many', columns: 8, rows: 8 });
    const yarns = alphabet.map(({ text }, i) => ({
      ...base.yarns[0]!,
      id: `y${i + 1}` as const,
      symbol: text,
      name: `${i} ${'very long '.repeat(20)}`.slice(0, 200),
    }));
    const { page, errors } = await drawing({ ...base, yarns });
    const room = (await page.getByRole('application').boundingBox())!;
    expect(room.width).toBeGreaterThan(600);
    expect(room.height).toBeGreaterThan(500);
    await page.keyboard.press('Tab');
    await page.getByRole('button', { name: 'Bare cord' }).scrollIntoViewIfNeeded();
    await page.getByRole('button', { name: 'Bare cord' }).click();
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBe(0);
    expect(errors).toEqual([]);
  });
});

describe('this hanging', () => {
  it('counts live, and a change of its measures is one step', async () => {
    const { page, at } = await drawing(designFromLetters(plain));
    const fact = (name: string) => page.locator('.facts dl > div', { hasText: name }).locator('dd');
    expect(await fact('Knots').textContent()).toBe('48');
    await page.getByRole('button', { name: 'Bare cord' }).click();
    await drag(page, await at(0, 0), await at(0, 7));
    await page.locator('.facts dd', { hasText: /^40$/ }).waitFor();

    await page.getByRole('button', { name: 'Size, cords, dowel…' }).click();
    await page.getByLabel('as written here').check();
    await page.getByLabel('Knots per 10 cm across').fill('25');
    await page.getByLabel('Rows per 10 cm down').fill('20');
    await page.getByLabel('Longest fringe in cm').fill('0');
    await page.getByText('About 3.2 cm wide, 3 cm knotted, 3 cm with the fringe.').waitFor();
    await page.getByText('As you wrote it, not measured').waitFor();
    await page.getByRole('button', { name: 'Done' }).click();
    await page.locator('.facts dd', { hasText: /^≈ 3\.2 cm × 3 cm$/ }).waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.locator('.facts dd', { hasText: /^≈ 4 cm × / }).waitFor();
  });
});
