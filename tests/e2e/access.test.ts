/** What axe-core finds on every screen, panel and dialog, and whether every control can be hit: in both themes. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { designFromLetters } from '../notation.ts';
import { drag, drawing, isPlanned } from './drawing.ts';
import { seriousFindings } from './findings.ts';
import { runCommand } from './run-command.ts';
import { openStudio } from './studio.ts';

/** A picture with lone knots, so that there is something to tidy. */
const speckled = [
  'aaaaaaaaaaaa',
  'abaaccccaaaa',
  'aaaaccccaaba',
  'aaaabbbbaaaa',
  'acaabbbbaaaa',
  'aaaaaaaaaaaa',
];

/** What a dialog is opened by, from the Draw screen with a patch chosen and a motif kept. */
const dialogsOnDraw = [
  'add a yarn',
  'change this yarn',
  'replace yarn everywhere',
  'merge yarn',
  'yarns that go',
  'recolour',
  'stash',
  'this hanging',
  'repeat the patch',
  'keep motif',
  'rename motif',
  'remove motif',
  'chart resize',
  'insert cords and rows',
  'delete cords and rows',
  'rows as text',
  'settings',
];

/** What changes the Draw screen: commands, and what they show. */
const statesOfDraw = [
  ...['line', 'rectangle', 'ellipse', 'fill', 'unpick', 'match', 'replace', 'motif', 'border'].map(
    (tool) => `draw ${tool}`,
  ),
  'mirror both',
  'half drop',
  'show lone knots',
  'view symbols',
  'finished',
  'finished',
  'across the room',
  'across the room',
  'reference picture',
  'shape the fringe',
];

describe.each(['light', 'dark'] as const)('in the %s theme nothing serious is found', (colorScheme) => {
  it('on the shelf, the Draw screen and Publish', async () => {
    const { page } = await openStudio({ colorScheme });
    await page.getByRole('button', { name: 'Open Moth at the window' }).waitFor();
    expect(await seriousFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Open Moth at the window' }).click();
    await isPlanned(page);
    expect(await seriousFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Publish' }).click();
    await page.getByText(/pages for 30 cords/).waitFor();
    expect(await seriousFindings(page)).toEqual([]);
  });

  it('in the dialogs of the shelf', async () => {
    const { page } = await openStudio({ colorScheme });
    const click = (name: string) => () => page.getByRole('button', { name }).first().click();
    for (const name of ['New design…', 'Picture to chart…', 'Rename…', 'Move to bin'])
      expect(await inDialog(page, click(name)), name).toEqual([]);
    expect(await inDialog(page, () => page.keyboard.press('F1'))).toEqual([]);
  });

  it('in the dialogs of the Draw screen', async () => {
    const { page, at } = await drawing(designFromLetters(speckled), { colorScheme });
    await page.keyboard.press('p');
    await drag(page, await at(1, 4), await at(4, 7));
    await runCommand(page, 'keep motif');
    await page.getByRole('dialog').getByRole('textbox', { name: 'Name' }).fill('Lamp');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    for (const words of dialogsOnDraw)
      expect(await inDialog(page, () => runCommand(page, words)), words).toEqual([]);
  });

  it('in the states of the Draw screen', async () => {
    const { page, at } = await drawing(designFromLetters(speckled), { colorScheme });
    await page.keyboard.press('t');
    await page.getByRole('textbox', { name: 'Text' }).fill('Two\nlines');
    expect(await seriousFindings(page), 'text').toEqual([]);
    await page.keyboard.press('Control+2');
    await page.keyboard.press('p');
    await drag(page, await at(1, 4), await at(4, 7));
    expect(await seriousFindings(page), 'a patch').toEqual([]);
    for (const words of statesOfDraw) {
      await runCommand(page, words);
      expect(await seriousFindings(page), words).toEqual([]);
    }
    await page.getByLabel('by hand').check();
    expect(await seriousFindings(page), 'fringe by hand').toEqual([]);
    for (const name of ['View', 'More']) {
      await page.getByRole('button', { name: new RegExp(`^${name}`) }).click();
      expect(await seriousFindings(page), name).toEqual([]);
      await page.keyboard.press('Escape');
    }
    await runCommand(page, 'lock layer');
    await runCommand(page, 'hide layer');
    await runCommand(page, 'draw fill');
    expect(await seriousFindings(page), 'a layer hidden and locked').toEqual([]);
    await runCommand(page, 'lock layer');
    await runCommand(page, 'hide layer');
    await runCommand(page, 'tidy');
    expect(await seriousFindings(page), 'tidying').toEqual([]);
    // Whoever asks for less motion gets none.
    await page.emulateMedia({ reducedMotion: 'reduce' });
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
  });
});

it('a control that is too small and has no name would be found', async () => {
  const { page } = await openStudio();
  await page.getByRole('button', { name: 'Open Moth at the window' }).waitFor();
  expect(await seriousFindings(page)).toEqual([]);
  await page.evaluate(() => {
    const control = document.createElement('button');
    control.style.cssText = 'width: 9px; height: 9px; min-height: 0; padding: 0';
    document.querySelector('main')?.append(control);
  });
  const found = await seriousFindings(page);
  expect(found.map((finding) => finding.split(':')[0])).toEqual(['button-name', 'target of 9 × 9']);
});

async function inDialog(page: Page, open: () => Promise<void>): Promise<string[]> {
  await open();
  await page.getByRole('dialog').waitFor();
  const findings = await seriousFindings(page);
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  return findings;
}
