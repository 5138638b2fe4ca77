/** What is done on the Swatches leaf. Adding, changing and removing are one step of the history each. */
import type { Design } from '../../../shared/design/design.ts';
import { limits } from '../../../shared/design/limits.ts';
import type { Swatch } from '../../../shared/design/schema.ts';
import { swatchDesign } from '../../../shared/gauge/swatch-design.ts';
import { swatchInstructions } from '../../../shared/gauge/swatch-instructions.ts';
import { measuredSwatches } from '../../../shared/gauge/told-gauge.ts';
import { mayLeave } from '../../flows/opening.ts';
import { ask } from '../../shell/dialogs.tsx';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { change, endStroke } from '../../store/changing.ts';
import { openDesign, studio } from '../../store/studio.ts';
import { showLeaf } from '../leaves/leaves.ts';
import { plans } from '../plans/plans.ts';
import { MakeSwatchSheet } from './make-swatch-sheet.tsx';
import type { WrittenSwatch } from './measured-swatch.ts';
import { SwatchSheet } from './swatch-sheet.tsx';
import { swatchName } from './swatch-words.ts';

export async function addSwatch(): Promise<void> {
  const design = studio.getState().open?.design;
  if (!design) return;
  if (design.swatches.length >= limits.swatches) {
    tellProblem(`A design has at most ${limits.swatches} swatches. Remove one that tells little.`);
    return;
  }
  const swatch = await askForSwatch('Add a swatch', { date: today() }, design.swatches.length);
  // A gauge that is told stays behind them, so that they are numbered as they come.
  if (swatch)
    setSwatches('Add a swatch', (swatches) => [
      ...measuredSwatches(swatches),
      swatch,
      ...swatches.filter(({ told }) => told),
    ]);
  letGoOfTried();
}

/** `index` counts from 0. */
export async function changeSwatch(index: number): Promise<void> {
  const before = studio.getState().open?.design.swatches[index];
  if (!before) return;
  const swatch = await askForSwatch(`Change ${swatchName(before, index)}`, before, index);
  if (swatch) setSwatches('Change a swatch', (swatches) => swatches.with(index, swatch));
  letGoOfTried();
}

export function removeSwatch(index: number): void {
  setSwatches('Remove a swatch', (swatches) => swatches.toSpliced(index, 1));
  tell('Removed. Undo brings it back.');
}

/** A small design to tie, in the place of the one that is open, once that is safe. */
export async function makeSwatch(): Promise<void> {
  endStroke();
  const { open, settings } = studio.getState();
  if (!open) return;
  const swatch = withNotes(swatchDesign(open.design), settings.units);
  const sure = await ask<true>({
    label: 'Make me a swatch',
    wide: true,
    body: (answer) => <MakeSwatchSheet swatch={swatch} answer={answer} />,
  });
  if (!sure || !(await mayLeave())) return;
  showLeaf('chart');
  openDesign(swatch, null);
}

/** What to measure goes along with the swatch. */
function withNotes(swatch: Design, units: Parameters<typeof swatchInstructions>[1]): Design {
  const notes = swatchInstructions(swatch, units)
    .map(({ sentence }, i) => `${i + 1}. ${sentence}`)
    .join('\n');
  return { ...swatch, notes };
}

/** While it is written, the plan that is shown is the one with it. */
function askForSwatch(title: string, before: WrittenSwatch, index: number): Promise<Swatch | null> {
  return ask<Swatch>({
    label: title,
    wide: true,
    body: (answer) => <SwatchSheet {...{ title, before, index, answer }} />,
  });
}

/** Last of all: a swatch that was kept is planned with already, and is not planned with once more. */
function letGoOfTried(): void {
  plans.setState({ draft: null });
}

function setSwatches(label: string, next: (swatches: Swatch[]) => Swatch[]): void {
  const { open } = studio.getState();
  if (open) change(label, { kind: 'set', field: 'swatches', value: next([...open.design.swatches]) });
}

/** The day at the maker's own clock, as ISO 8601 writes it. */
function today(): string {
  const now = new Date();
  const two = (count: number) => String(count).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
