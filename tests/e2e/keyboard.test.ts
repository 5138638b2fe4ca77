/** A whole session by keys alone: whoever can't use a pointer makes a hanging from the first knot to the saved file. */
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import { designFromLetters, lettersOf, lettersOfChart } from '../notation.ts';
import { designIn, drawing, isPlanned } from './drawing.ts';
import { runCommand } from './run-command.ts';
import { openStudio } from './studio.ts';

/** Presses keys one after the other; 'ArrowRight*3' three times. */
async function press(page: Page, ...keys: string[]): Promise<void> {
  for (const each of keys) {
    const [key, times] = each.split('*');
    for (let i = 0; i < Number(times ?? 1); i++) await page.keyboard.press(key!);
  }
}

/** Goes on with Tab until the control has the focus; fails where Tab never comes to it. */
async function tabTo(control: Locator): Promise<void> {
  const page = control.page();
  for (let i = 0; i < 80; i++) {
    if (await control.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not lead to ${control}`);
}

describe('by keys alone', () => {
  it('a design is begun, drawn, changed, saved and opened again', async () => {
    const { page, shelf, errors } = await openStudio();
    const path = join(shelf, 'Lantern night.larkrow');
    await page.getByRole('button', { name: 'Open Moth at the window' }).waitFor();

    await press(page, 'Control+n');
    await page.getByRole('dialog', { name: 'New design' }).waitFor();
    await press(page, 'Control+a');
    await page.keyboard.type('Lantern night');
    for (const [label, figure] of [
      ['Cords', '16'],
      ['Rows', '12'],
    ] as const) {
      await tabTo(page.getByRole('dialog').getByLabel(label, { exact: true }));
      await press(page, 'Control+a');
      await page.keyboard.type(figure);
    }
    await press(page, 'Enter');
    await isPlanned(page);

    // The chart has the focus. The second yarn, and a mirror down the middle: one knot becomes two.
    const chart = page.getByRole('application');
    expect(await chart.evaluate((element) => element === document.activeElement)).toBe(true);
    await press(page, '.', 'v', 'ArrowRight*2', 'Space', 'ArrowDown', 'Space');
    // A line from there, straight down.
    await press(page, 'l', 'Space', 'ArrowDown*2', 'Space');

    // Text: its field is two parts further on; then back to the chart, set down, moved up and tied.
    await press(page, 'n', 't', 'F6*2');
    await page.keyboard.type('Lo');
    await press(page, 'Control+2', 'Home', 'ArrowRight*7', 'ArrowDown*4', 'Enter', 'ArrowUp', 'Enter');
    expect(await letters(page, path)).toEqual([
      'aacaaaaaaaaaacaa',
      'aacaaaaaaaaaacaa',
      'aacaaaaaaaaaacaa',
      'aacaaaaaaaaaacaa',
      'aaaacaaaaaaaaaaa',
      'aaaacaaaacaaaaaa',
      'aaaacaaacacaaaaa',
      'aaaacaaacacaaaaa',
      'aaaacccaacaaaaaa',
      ...Array.from({ length: 3 }, () => 'aaaaaaaaaaaaaaaa'),
    ]);

    // The L is chosen, moved two cords left, flipped by its command, and tied down.
    await press(
      page,
      'p',
      'ArrowUp*3',
      'ArrowLeft*3',
      'Space',
      'ArrowDown*4',
      'ArrowRight*2',
      'Space',
      'ArrowLeft*2',
    );
    await runCommand(page, 'patch flip right');
    await press(page, 'Enter');
    // Another layer, one knot of the next yarn on it, and that layer moved down in its list.
    await runCommand(page, 'add layer');
    await press(page, 'k', '.', 'ArrowUp', 'Space', 'F6');
    await tabTo(page.getByRole('button', { name: /^Layer 3, / }));
    await press(page, 'Alt+ArrowDown');
    await press(page, 'Control+z*2', 'Control+y*2');
    const drawn = [
      'aacaaaaaaaaaacaa',
      'aacaaaaaaaaaacaa',
      'aacaaaaaaaaaacaa',
      'aacaaaaaaaaaacaa',
      'aaaacaaaaaaaaaaa',
      'aaaacaaaacaaaaaa',
      'aaaacaaacacaaaaa',
      'aaaacadacacaaaaa',
      'aacccaaaacaaaaaa',
      ...Array.from({ length: 3 }, () => 'aaaaaaaaaaaaaaaa'),
    ];
    expect(await letters(page, path)).toEqual(drawn);
    const design = designIn(path);
    expect(design.layers.map(({ name }) => name)).toEqual(['Ground', 'Layer 3', 'Picture']);
    expect(lettersOf(design, 1)[7]).toBe('......d.........');
    expect([design.title, design.columns, design.rows]).toEqual(['Lantern night', 16, 12]);

    // Closed, and opened again from the shelf: the chart says its row, and nothing is lost.
    await press(page, 'Control+w');
    await tabTo(page.getByRole('button', { name: 'Open Lantern night' }));
    await press(page, 'Enter');
    await isPlanned(page);
    await press(page, 'ArrowDown*7', 'i');
    await page
      .locator('[aria-live]', { hasText: 'Row 8, right to left: 5 Linen (16-12), 1 Tide (11)' })
      .waitFor({ state: 'attached' });
    expect(designIn(path)).toEqual(design);
    expect(errors).toEqual([]);
  });

  it('a border is laid from a patch, lone knots are tidied, the fringe is cut, a layer is named', async () => {
    const rows = [
      'aaaaaaaaaaaaaaaa',
      'abbaaaaaaaaaaaaa',
      'abaaaaaaaaacaaaa',
      ...Array(6).fill('aaaaaaaaaaaaaaaa'),
    ];
    const { page, saved, savedDesign, errors } = await drawing(designFromLetters(rows));
    const frieze = page.getByRole('combobox', { name: /^Frieze/ });
    await page.getByRole('application').focus();

    // The lone knot is looked at, and tidied.
    await runCommand(page, 'tidy');
    await press(page, 'Enter');
    expect((await saved())[2]).toBe('abaaaaaaaaaaaaaa');

    // A block of two by two, repeated along the top edge by translation alone.
    await press(
      page,
      'ArrowDown',
      'ArrowRight',
      'p',
      'Space',
      'ArrowDown',
      'ArrowRight',
      'Space',
      'b',
      'F6*2',
    );
    await tabTo(frieze);
    await press(page, 'Home');
    for (const edge of ['Right', 'Bottom', 'Left']) {
      await tabTo(page.getByRole('button', { name: edge, exact: true }));
      await press(page, 'Space');
    }
    await tabTo(page.getByRole('button', { name: 'Draw it' }));
    await press(page, 'Enter');
    expect(await saved()).toEqual([
      'bbbbbbbbbbbbbbbb',
      'babababababababa',
      'abaaaaaaaaaaaaaa',
      ...rows.slice(3),
    ]);

    // The fringe becomes a V, and longer in its middle.
    await runCommand(page, 'shape the fringe');
    await press(page, 'ArrowRight');
    await tabTo(page.getByRole('slider', { name: 'Fringe in the middle' }));
    const before = (await savedDesign()).fringe;
    await press(page, 'ArrowDown*2');
    const after = (await savedDesign()).fringe;
    expect([before.shape, after.shape]).toEqual(['v', 'v']);
    expect(after.longMm).toBeGreaterThan(before.longMm);
    expect(after.shortMm).toBe(before.shortMm);

    await runCommand(page, 'rename layer');
    await page.keyboard.type('Moth');
    await press(page, 'Enter');
    expect((await savedDesign()).layers.map(({ name }) => name)).toEqual(['Moth']);
    expect(errors).toEqual([]);
  });
});

/** The flat chart as it is once saved. */
async function letters(page: Page, path: string): Promise<string[]> {
  await press(page, 'Control+s');
  await page.getByText('· saved').waitFor();
  return lettersOfChart(flatten(designIn(path)));
}
