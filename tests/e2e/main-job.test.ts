/** The whole job, as a person does it: from an empty chart or a picture to a pattern on paper. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { flatten } from '../../shared/chart/chart.ts';
import type { Design } from '../../shared/design/design.ts';
import { readDesign } from '../../shared/design/read-design.ts';
import { lettersOfChart } from '../notation.ts';
import { readPdf } from './read-pdf.ts';
import { openStudio } from './studio.ts';

function designIn(path: string): Design {
  const read = readDesign(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value;
}

/** By its label; the field's old text is replaced. */
async function write(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).fill(text);
}

async function saveIn(page: Page, folder: string, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Folders', exact: true }).click();
  await page.getByRole('button', { name: folder }).click();
  await write(page, 'Name', name);
  await page.getByRole('button', { name: 'Save here' }).click();
}

it('goes from a new design to a pattern: draw, undo, save, reopen, export', async () => {
  const { page, shelf, folder, errors, foreignRequests, logged } = await openStudio();
  await page.getByRole('button', { name: 'New design…' }).click();
  await write(page, 'Title', 'Kite over the bay');
  await write(page, 'Cords', '16');
  await write(page, 'Rows', '12');
  await page.getByRole('button', { name: 'Start drawing' }).click();

  // With the keyboard, whose cells are sure: a knot, then a rectangle of three by two from row 3, cord 3.
  const chart = page.getByRole('application');
  await chart.focus();
  await page.keyboard.press('Space');
  await page.keyboard.press('r');
  for (const key of ['ArrowDown', 'ArrowDown', 'ArrowRight', 'ArrowRight', 'Space'])
    await page.keyboard.press(key);
  for (const key of ['ArrowRight', 'ArrowRight', 'ArrowDown', 'Space']) await page.keyboard.press(key);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+y');
  await page.keyboard.press('Control+y');
  await page.keyboard.press('Control+s');
  await page.getByText('Saved as Kite over the bay.larkrow.').waitFor();
  const drawn = ['b'.padEnd(16, 'a'), 'a'.repeat(16), 'aabbb'.padEnd(16, 'a'), 'aabbb'.padEnd(16, 'a')];
  const path = join(shelf, 'Kite over the bay.larkrow');
  expect(lettersOfChart(flatten(designIn(path))).slice(0, 4)).toEqual(drawn);

  // With the pointer: a line all across the chart in two moves leaves no gap.
  await page.keyboard.press('k');
  await page.keyboard.press('Control+0');
  const room = (await chart.boundingBox())!;
  // From the top down to where the pointer is over row 6.
  const middle = room.x + room.width / 2;
  let y = room.y;
  while (y < room.y + room.height && (await page.getByText('Row 6 ←').count()) === 0) {
    y += 4;
    await page.mouse.move(middle, y);
  }
  await page.mouse.move(room.x + 20, y);
  await page.mouse.down();
  await page.mouse.move(room.x + room.width - 20, y, { steps: 2 });
  await page.mouse.up();
  await page.getByText('· not saved').waitFor();
  await page.keyboard.press('Control+s');
  await page.getByText('· saved').waitFor();
  expect(lettersOfChart(flatten(designIn(path)))).toContain('b'.repeat(16));

  // Closed and opened again from the shelf.
  await page.getByRole('button', { name: 'Shelf' }).click();
  await page.getByRole('button', { name: 'Open Moth at the window' }).click();
  await page.getByText('Moonlight').waitFor();
  await page.getByRole('button', { name: 'Shelf' }).click();
  await page.getByRole('button', { name: 'Open Kite over the bay' }).click();
  await page.getByRole('application', { name: /16 cords and 12 rows/ }).waitFor();

  await page.getByRole('button', { name: 'Publish' }).click();
  await page.getByText(/pages for 16 cords and 12 rows/).waitFor();
  const promised = Number(/^\d+/.exec((await page.getByText(/pages for 16 cords/).textContent())!)![0]);
  await page.getByRole('button', { name: 'Pattern as PDF…' }).click();
  await saveIn(page, 'Pictures and patterns', 'Kite A4.pdf');
  await page.getByText(/Kite A4\.pdf: \d+ pages/).waitFor();
  const pdf = await readPdf(readFileSync(join(folder, 'Kite A4.pdf')));
  expect(pdf.pages).toHaveLength(promised);
  const text = pdf.pages.join('\n');
  expect(text).toContain('Kite over the bay');
  expect(text).toContain('Row 1, left to right');
  expect(text).toMatch(/1 Dusk \(1\), 15 Linen \(2–16\)/);
  expect(text).toMatch(/strangle/);

  await page.getByRole('button', { name: 'Chart as PNG…' }).click();
  await saveIn(page, 'Pictures and patterns', 'Kite chart.png');
  await page.getByText('Saved Kite chart.png.').waitFor();
  expect((await sharp(join(folder, 'Kite chart.png')).metadata()).format).toBe('png');

  expect({ errors, foreignRequests, logged }).toEqual({ errors: [], foreignRequests: [], logged: [] });
});

it('turns a picture into a chart in the knot’s proportions, to go on drawing', async () => {
  const { page, shelf, folder, errors, foreignRequests } = await openStudio();
  // Left half red, right half blue: whatever yarns are chosen, there must be two halves.
  const half = { width: 100, height: 192, channels: 3 as const };
  const blue = await sharp({ create: { ...half, background: '#2244aa' } })
    .png()
    .toBuffer();
  await sharp({ create: { ...half, width: 200, background: '#aa3322' } })
    .composite([{ input: blue, left: 100, top: 0 }])
    .jpeg({ quality: 95 })
    .toFile(join(folder, 'Two halves.jpg'));

  await page.getByRole('button', { name: 'Picture to chart…' }).click();
  await page.getByRole('button', { name: 'Folders', exact: true }).click();
  await page.getByRole('button', { name: 'Pictures and patterns' }).click();
  await page.getByRole('button', { name: 'Two halves.jpg' }).click();
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await page.getByRole('heading', { name: 'Picture to chart' }).waitFor();
  await write(page, 'Cords', '20');
  await write(page, 'How many yarns', '2');
  await page.getByRole('button', { name: 'Make the chart' }).click();
  // 200 x 192 pixels at 5.0 by 4.8 mm: 20 cords are 100 mm, 96 mm are 20 rows.
  await page.getByRole('application', { name: /20 cords and 20 rows/ }).waitFor();
  await page.keyboard.press('Control+s');
  await page.getByText(/Saved as Two halves/).waitFor();

  const rows = lettersOfChart(flatten(designIn(join(shelf, 'Two halves.larkrow'))));
  expect(rows).toHaveLength(20);
  expect(new Set(rows.map((row) => row.replace(/(.)\1+/g, '$1'))).size).toBe(1);
  expect(rows[0]).toMatch(/^(.)\1{9}(.)\2{9}$/);
  expect({ errors, foreignRequests }).toEqual({ errors: [], foreignRequests: [] });
});

it('asks before work is left that is not saved, and loses nothing', async () => {
  const { page, shelf } = await openStudio();
  await page.getByRole('button', { name: 'New design…' }).click();
  await write(page, 'Title', 'Fern');
  await page.getByRole('button', { name: 'Start drawing' }).click();
  await page.getByRole('application').focus();
  await page.keyboard.press('Space');
  await page.getByRole('button', { name: 'Shelf' }).click();
  await page.getByRole('button', { name: 'Open Moth at the window' }).click();
  await page.getByRole('heading', { name: 'Save your work first?' }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Draw', exact: true }).click();
  await page.getByText('· not saved').waitFor();
  await page.getByRole('button', { name: 'Shelf' }).click();
  await page.getByRole('button', { name: 'Open Moth at the window' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Moonlight').waitFor();
  expect(readdirSync(shelf)).toContain('Fern.larkrow');
  expect(flatten(designIn(join(shelf, 'Fern.larkrow'))).cells[0]).toBe(2);
});

it('keeps the shelf: duplicate, rename, move to the bin', async () => {
  const { page, shelf } = await openStudio();
  const entry = (title: string) =>
    page.getByRole('listitem').filter({ has: page.getByText(title, { exact: true }) });
  await entry('Moth at the window').getByRole('button', { name: 'Duplicate' }).click();
  await page.getByText(/Duplicated as/).waitFor();
  const copy = readdirSync(shelf).find(
    (name) => name.startsWith('Moth') && name !== 'Moth at the window.larkrow',
  )!;
  const title = designIn(join(shelf, copy)).title;
  await entry(title).getByRole('button', { name: 'Rename…' }).click();
  await write(page, 'Title', 'Moth, second try');
  await page.getByRole('dialog').getByRole('button', { name: 'Rename' }).click();
  await page.getByText('Moth, second try').waitFor();
  expect(designIn(join(shelf, 'Moth, second try.larkrow')).title).toBe('Moth, second try');
  await entry('Moth, second try').getByRole('button', { name: 'Move to bin' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Move to bin' }).click();
  await page.getByText('Moth, second try').waitFor({ state: 'detached' });
  expect(existsSync(join(shelf, 'Moth, second try.larkrow'))).toBe(false);
});
