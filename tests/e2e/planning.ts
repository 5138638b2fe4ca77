import type { Page } from 'playwright-core';
import { flatten } from '../../shared/chart/chart.ts';
import type { Design } from '../../shared/design/design.ts';
import { materialsOf } from '../../shared/materials/tally.ts';
import type { Plan } from '../../shared/tying/plan.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { designFromLetters } from '../notation.ts';
import type { View } from './browser.ts';
import { type Drawing, drawing } from './drawing.ts';

/** Strands, carries, a lone knot, and enough of the ground for several pieces. */
const letters = [
  'aaaaaaaaaaaa',
  'aaabbbbbbaaa',
  'aaabccccbaaa',
  'aadbccccbaaa',
  'aaabbbbbbaaa',
  'aaaaaaaaaaaa',
];
export const design = designFromLetters(letters);

export type Leaf = 'Chart' | 'Tying order' | 'Swatches' | 'Sizes' | 'Bundles' | 'Materials' | 'What if';

/** The Plan screen with the design on it, its full plan made. */
export async function planning(of: Design = design, view: View = {}): Promise<Drawing> {
  const studio = await drawing(of, view);
  await studio.page.keyboard.press('Control+3');
  await isFullyPlanned(studio.page);
  return studio;
}

export function isFullyPlanned(page: Page): Promise<void> {
  return page.getByText('The full plan.').waitFor();
}

export async function turnTo(page: Page, leaf: Leaf): Promise<void> {
  await page
    .getByRole('toolbar', { name: 'Shown in the middle' })
    .getByRole('button', { name: leaf, exact: true })
    .click();
  if (leaf !== 'Chart') await page.getByRole('region', { name: leaf, exact: true }).waitFor();
}

export function planOf(of: Design): Plan {
  const plan = planStrands(of, flatten(of));
  if (!plan.ok) throw new Error(plan.problem.sentence);
  return plan.value;
}

export const materialsFor = (of: Design) => materialsOf(of, flatten(of), planOf(of));

/** What is kept when the field is left. */
export async function write(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).fill(text);
  await page.keyboard.press('Enter');
}

/** The cells of the row of a table that begins with this name. */
export function cells(page: Page, name: string): Promise<string[]> {
  return page
    .locator('.plan-leaf tr')
    .filter({ has: page.getByRole('rowheader', { name, exact: true }) })
    .getByRole('cell')
    .allTextContents();
}
