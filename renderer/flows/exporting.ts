/** Writing the pattern and the chart's picture, with progress and a way to stop. */
import type { Design } from '../../shared/design/design.ts';
import type { SettledPlan } from '../../shared/design/schema.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import { copyOf } from '../../shared/pattern/copy.ts';
import { designOfEdition } from '../../shared/pattern/editions/edition.ts';
import { noPages } from '../../shared/pattern/no-pages.ts';
import { counted } from '../../shared/units/counted.ts';
import { host } from '../host.ts';
import { patternView } from '../publish/pattern-view.ts';
import { tellProblem } from '../shell/notices.tsx';
import { withProgress } from '../shell/progress.tsx';
import { studio } from '../store/studio.ts';
import { placeToSave } from './places.ts';
import { reportSaved } from './report-saved.ts';
import { copyInWords, suggestedName } from './suggested-name.ts';

export async function savePattern(): Promise<void> {
  const { open } = studio.getState();
  if (!open) return;
  const { document } = patternView.getState();
  if (document?.pages.length === 0) return tellProblem(noPages.problem.sentence);
  await savePatternOf(open.design, open.design.title);
}

/** An edition that was published, as it was then; how the copy is printed, and for whom, is chosen now. */
export async function saveEdition(number: number): Promise<void> {
  const { open } = studio.getState();
  if (!open) return;
  const again = designOfEdition(open.design, number);
  if (!again.ok) return tellProblem(again.problem.sentence);
  const { title, pattern } = again.value;
  const copy = { ...pattern?.copy, ...open.design.pattern?.copy };
  await savePatternOf({ ...again.value, pattern: { ...pattern, copy } }, `${title}, edition ${number}`);
}

async function savePatternOf(design: Design, name: string): Promise<void> {
  const { paper, units } = studio.getState().settings;
  const { preparedFor, attachDesign } = patternView.getState();
  const copy = { ...copyOf(design), preparedFor };
  const place = await placeToSave('pattern', suggestedName(name, ` ${copyInWords(copy, paper)}.pdf`));
  if (!place) return;
  const text = writeDesign(design);
  const saved = await withProgress('Making the pattern', (options) =>
    host().call('pattern.save', { text, paper, units, copy, attachDesign, target: place.handle }, options),
  );
  reportSaved(saved, ({ fileName, pages }) => `${fileName}: ${counted(pages, 'page')}.`);
}

/** `fitted`: each piece cut as long as it is used, not at the working length. Gives the plan that they are of; null where they were not saved. */
export async function saveLabels(fitted: boolean): Promise<SettledPlan | null> {
  const { open, settings } = studio.getState();
  if (!open) return null;
  const { paper, units } = settings;
  const place = await placeToSave('pattern', suggestedName(open.design.title, ' labels.pdf'));
  if (!place) return null;
  const args = { text: writeDesign(open.design), paper, units, fitted, target: place.handle };
  const saved = await withProgress('Making the labels', (options) =>
    host().call('labels.save', args, options),
  );
  reportSaved(saved, ({ fileName, pages }) => `${fileName}: ${counted(pages, 'page')} of labels.`);
  return saved.ok ? saved.value.plan : null;
}

export async function saveChartPng(): Promise<void> {
  const { open } = studio.getState();
  if (!open) return;
  const place = await placeToSave('png', suggestedName(open.design.title, ' chart.png'));
  if (!place) return;
  const saved = await host().call('png.save', { text: writeDesign(open.design), target: place.handle });
  reportSaved(saved, ({ fileName }) => `Saved ${fileName}.`);
}
