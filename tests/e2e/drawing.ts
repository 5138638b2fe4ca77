/** The Draw screen with a design of one's own, and what it holds once saved. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { flatten } from '../../shared/chart/chart.ts';
import type { Design } from '../../shared/design/design.ts';
import { readDesign } from '../../shared/design/read-design.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { lettersOfChart } from '../notation.ts';
import type { View } from './browser.ts';
import { openStudio, type Studio } from './studio.ts';

interface Place {
  readonly x: number;
  readonly y: number;
}

export interface Drawing extends Studio {
  /** The design as it is once saved. */
  savedDesign(): Promise<Design>;
  /** Its flat chart, in letters. */
  saved(): Promise<string[]>;
  /** The middle of a cell on the screen; row and column from 0. */
  at(row: number, column: number): Promise<Place>;
}

/** The Draw screen with this design, the first yarn that is not the ground chosen. */
export async function drawing(design: Design, view: View = {}): Promise<Drawing> {
  const studio = await openStudio(view);
  const { page, shelf } = studio;
  const path = join(shelf, 'Drawn.larkrow');
  writeFileSync(path, writeDesign({ ...design, title: 'Drawn' }));
  await page.evaluate(() => window.dispatchEvent(new Event('focus')));
  await page.getByRole('button', { name: 'Open Drawn' }).click();
  await isPlanned(page);
  await page.evaluate(() => document.fonts.ready);
  const savedDesign = async () => {
    if ((await page.getByText('· not saved').count()) > 0) await page.keyboard.press('Control+s');
    await page.getByText('· saved').waitFor();
    return designIn(path);
  };
  return {
    ...studio,
    savedDesign,
    saved: async () => lettersOfChart(flatten(await savedDesign())),
    async at(row, column) {
      // The cell cursor's outline stands on its cell, to a pixel: where cells are small, all but the first are told from both ends.
      await page.getByRole('application').focus();
      const far = Math.ceil(design.rows / 10);
      await page.keyboard.press('Home');
      for (let i = 0; i < far; i++) await page.keyboard.press('PageUp');
      const first = middleOf((await outline(page).boundingBox())!);
      await page.keyboard.press('End');
      for (let i = 0; i < far; i++) await page.keyboard.press('PageDown');
      const last = middleOf((await outline(page).boundingBox())!);
      await page.keyboard.press('Home');
      for (let i = 0; i < far; i++) await page.keyboard.press('PageUp');
      return {
        x: first.x + (last.x - first.x) * (column / Math.max(1, design.columns - 1)),
        y: first.y + (last.y - first.y) * (row / Math.max(1, design.rows - 1)),
      };
    },
  };
}

function middleOf({ x, y, width, height }: { x: number; y: number; width: number; height: number }): Place {
  return { x: x + width / 2, y: y + height / 2 };
}

export function designIn(path: string): Design {
  const read = readDesign(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value;
}

/** Waits until the figures beside the chart are those of a plan. */
export async function isPlanned(page: Page): Promise<void> {
  await page.locator('.side').getByText('Loose ends').first().waitFor();
}

/** The outline of the cell under the pointer or the cell cursor. */
export function outline(page: Page): Locator {
  return page.locator('.cell-outline');
}

export async function drag(page: Page, from: Place, to: Place): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 3 });
  await page.mouse.up();
}
