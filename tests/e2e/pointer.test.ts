/** What is dragged on the Draw screen by mouse, pen or fingers, and that nothing is drawn by accident. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { fringeMm } from '../../shared/gauge/fringe.ts';
import { designFromLetters, lettersOf } from '../notation.ts';
import { drag, drawing } from './drawing.ts';
import { fingersOn } from './fingers.ts';
import { runCommand } from './run-command.ts';

const plain = Array.from({ length: 8 }, () => 'aaaaaaaaaaaa');
const block = [...plain.slice(0, 2), 'aabbaaaaaaaa', 'aabaaaaaaaaa', ...plain.slice(4)];

async function middleOf(page: Page, selector: string): Promise<{ x: number; y: number }> {
  const { x, y, width, height } = (await page.locator(selector).first().boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
}

describe('a fast stroke', () => {
  it('leaves no gap where the pointer skips 200 cells between two events', async () => {
    const columns = 220;
    const { page, at, saved } = await drawing(
      designFromLetters(Array.from({ length: 9 }, () => 'a'.repeat(columns))),
    );
    const [from, to] = [await at(1, 8), await at(7, 208)];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y);
    await page.mouse.up();
    const rows = await saved();
    // From the first cord drawn to the last each has one knot, beside or one row from the knot before.
    const drawn = Array.from({ length: columns }, (_, c) =>
      rows.flatMap((row, r) => (row[c] === 'b' ? [r] : [])),
    );
    const stroke = drawn.slice(
      drawn.findIndex((knots) => knots.length > 0),
      drawn.findLastIndex((knots) => knots.length > 0) + 1,
    );
    expect(stroke.length).toBeGreaterThanOrEqual(200);
    expect(stroke.every((knots) => knots.length === 1)).toBe(true);
    const inRows = stroke.flat();
    expect(inRows.at(-1)! - inRows[0]!).toBeGreaterThanOrEqual(5);
    for (let i = 1; i < inRows.length; i++) expect([0, 1]).toContain(inRows[i]! - inRows[i - 1]!);
  });
});

describe('two fingers', () => {
  it('move and zoom with every tool in the hand, and what the first had begun is dropped', async () => {
    const { page, at } = await drawing(designFromLetters(block));
    const touch = await fingersOn(page);
    for (const letter of ['k', 'l', 'r', 'e', 'f', 'u', 'm', 'y', 'p', 't', 'o', 'b']) {
      await page.keyboard.press('Control+0');
      const [a, b] = [await at(2, 2), await at(6, 9)];
      const before = await at(0, 0);
      await page.keyboard.press(letter);
      await touch('touchStart', [a.x, a.y]);
      await touch('touchMove', [a.x, a.y + 20]);
      await touch('touchStart', [a.x, a.y + 20], [b.x, b.y]);
      await touch('touchMove', [a.x - 30, a.y + 20], [b.x + 30, b.y]);
      await touch('touchEnd');
      expect(await page.getByText('· not saved').count(), letter).toBe(0);
      expect((await at(0, 0)).x, letter).toBeLessThan(before.x);
      // Text and Motif without any say what is missing; that is read and put away.
      for (const notice of await page.getByRole('button', { name: 'I see' }).all()) await notice.click();
    }
  });
});

describe('drags', () => {
  it('a patch, to another place as one step', async () => {
    const { page, at, saved } = await drawing(designFromLetters(block));
    await page.keyboard.press('p');
    await drag(page, await at(2, 2), await at(3, 3));
    await drag(page, await at(2, 2), await at(5, 8));
    const moved = [
      ...plain.slice(0, 2),
      'aa--aaaaaaaa',
      'aa--aaaaaaaa',
      plain[4],
      'aaaaaaaabbaa',
      'aaaaaaaabaaa',
      plain[7],
    ];
    expect(await saved()).toEqual(moved);
    await page.keyboard.press('Control+z');
    expect(await saved()).toEqual(block);
  });

  it('a layer, to another place of its list', async () => {
    const { page, savedDesign } = await drawing(designFromLetters([plain, block]));
    const [top, below] = [await middleOf(page, '.layer >> nth=0'), await middleOf(page, '.layer >> nth=1')];
    await drag(page, top, { x: below.x, y: below.y + 15 });
    expect((await savedDesign()).layers.map(({ name }) => name)).toEqual(['Picture', 'Sheet 1']);
    await page.keyboard.press('Control+z');
    expect((await savedDesign()).layers.map(({ name }) => name)).toEqual(['Sheet 1', 'Picture']);
  });

  it('the symmetry’s centre, and what is drawn is mirrored about its new place', async () => {
    const { page, at, saved } = await drawing(designFromLetters(plain));
    await page.keyboard.press('v');
    const handle = page.getByRole('slider', { name: 'Centre across' });
    expect(await handle.getAttribute('aria-valuetext')).toBe('between cords 6 and 7');
    const from = await middleOf(page, '[aria-label="Centre across"]');
    const cord = (await at(0, 1)).x - (await at(0, 0)).x;
    await drag(page, from, { x: from.x - 2 * cord, y: from.y });
    expect(await handle.getAttribute('aria-valuetext')).toBe('between cords 4 and 5');
    const place = await at(1, 1);
    await page.mouse.click(place.x, place.y);
    expect((await saved())[1]).toBe('abaaaabaaaaa');
  });

  it('the fringe by hand: each cord is as long as the hand was low', async () => {
    const { page, at, savedDesign } = await drawing(designFromLetters(plain));
    await runCommand(page, 'shape the fringe');
    await page.getByLabel('by hand').check();
    const before = fringeMm(12, (await savedDesign()).fringe);
    const [left, right] = [await at(7, 0), await at(7, 11)];
    await drag(page, { x: left.x, y: left.y + 60 }, { x: right.x, y: right.y + 120 });
    const lengths = fringeMm(12, (await savedDesign()).fringe);
    expect(lengths).not.toEqual(before);
    // From cord to cord the hand went down.
    for (let cord = 1; cord < 12; cord++) expect(lengths[cord]).toBeGreaterThan(lengths[cord - 1]!);
    await page.keyboard.press('Control+z');
    expect(fringeMm(12, (await savedDesign()).fringe)).toEqual(before);
  });
});

describe('what is looked at before it is kept', () => {
  const speckled = [...block.slice(0, 5), 'aaaaaaacaaaa', ...block.slice(6)];

  it('tidying is dropped without a trace, or kept as one step', async () => {
    const { page, saved } = await drawing(designFromLetters(speckled));
    const tidy = () => page.getByRole('button', { name: 'Tidy lone knots…' }).click();
    await tidy();
    await page.getByText('1 knot changes.').waitFor();
    await page.getByRole('button', { name: 'Drop', exact: true }).click();
    expect(await page.getByText('· not saved').count()).toBe(0);
    expect(await saved()).toEqual(speckled);
    await tidy();
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    expect(await saved()).toEqual(block);
    await page.keyboard.press('Control+z');
    expect(await saved()).toEqual(speckled);
  });

  it('recolouring lets two yarns change places, as one step', async () => {
    const { page, saved, savedDesign } = await drawing(designFromLetters(block));
    await runCommand(page, 'recolour');
    const dialog = page.getByRole('dialog', { name: 'Recolour' });
    await dialog.getByLabel('Linen becomes').selectOption({ label: 'Dusk' });
    await dialog.getByLabel('Linen and Dusk change places').click();
    await dialog.getByRole('button', { name: 'Recolour 2 yarns' }).click();
    expect(await saved()).toEqual(
      block.map((row) => row.replace(/[ab]/g, (yarn) => (yarn === 'a' ? 'b' : 'a'))),
    );
    await page.keyboard.press('Control+z');
    expect(lettersOf(await savedDesign())).toEqual(block);
  });
});
